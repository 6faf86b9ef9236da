using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Gathers what can't be taken as it stands, with the lines as typed.</summary>
internal sealed class ProblemList
{
    /// <summary>More than this nobody reads: the rest is counted.</summary>
    public const int Most = 100;

    private readonly Dictionary<string, SourceText> _sources = new(StringComparer.Ordinal);
    private readonly List<Problem> _all = [];
    private readonly HashSet<(string File, int Line)> _broken = [];

    public bool Stops => _all.Exists(problem => problem.Effect == Effect.Stops);

    public bool Any => _all.Count > 0;

    /// <summary>Part of the answer on this line went into a comment, so that what is left of it says little.</summary>
    public bool IsLost(At at) => _all.Exists(problem => problem.At.File == at.File && problem.At.Line == at.Line && problem.Code == Messages.HashCode);

    public void Open(SourceText source) => _sources[source.File] = source;

    /// <summary>A line whose shape is broken gets one message: what else it says can't be told.</summary>
    public void Add(At at, Message message)
    {
        if (_broken.Contains((at.File, at.Line)))
        {
            return;
        }

        if (message.Effect == Effect.Stops)
        {
            _broken.Add((at.File, at.Line));
            _all.RemoveAll(problem => problem.At.File == at.File && problem.At.Line == at.Line);
        }

        var problem = new Problem(message.Code, at, message.Say, Typed(at), message.Effect);
        if (!_all.Contains(problem))
        {
            _all.Add(problem);
        }
    }

    /// <summary>In file order, the files in the order they were opened.</summary>
    public IReadOnlyList<Problem> InOrder()
    {
        var files = _sources.Keys.ToList();
        var sorted = _all
            .OrderBy(problem => files.IndexOf(problem.At.File))
            .ThenBy(problem => problem.At.Line)
            .ThenBy(problem => problem.At.Column)
            .ToList();
        if (sorted.Count <= Most)
        {
            return sorted;
        }

        var more = Messages.More(sorted.Count - Most, sorted.Exists(problem => problem.Effect == Effect.Stops));
        var next = sorted[Most];
        return [.. sorted.Take(Most), new Problem(more.Code, next.At, more.Say, next.Typed, more.Effect)];
    }

    private string Typed(At at) => _sources.TryGetValue(at.File, out var source) ? source.Line(at.Line) : "";
}
