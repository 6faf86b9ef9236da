using System.Text.RegularExpressions;
using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Gathers what can't be taken as it stands, with the lines as typed.</summary>
internal sealed partial class ProblemList
{
    /// <summary>More than this nobody reads: the rest is counted.</summary>
    public const int Most = 100;

    private readonly List<string> _files = [];
    private readonly Dictionary<string, SourceText> _sources = new(StringComparer.Ordinal);
    private readonly Dictionary<(string File, int Line), List<Problem>> _byLine = [];

    public bool Stops { get; private set; }

    public bool Any => _byLine.Count > 0;

    public void Open(SourceText source)
    {
        if (_sources.TryAdd(source.File, source))
        {
            _files.Add(source.File);
        }
    }

    /// <summary>A line whose shape is broken gets one message: what else it says can't be told.</summary>
    public void Add(At at, Message message)
    {
        if (!_byLine.TryGetValue((at.File, at.Line), out var here))
        {
            _byLine[(at.File, at.Line)] = here = [];
        }

        if (here.Exists(old => old.Effect == Effect.Stops) || here.Count > Most)
        {
            return;
        }

        if (message.Effect == Effect.Stops)
        {
            Stops = true;
            here.Clear();
        }

        var problem = new Problem(message.Code, at, Said(message.Say), Typed(at), message.Effect);
        if (!here.Contains(problem))
        {
            here.Add(problem);
        }
    }

    /// <summary>Part of the answer on this line went into a comment, so that what is left of it says little.</summary>
    public bool IsLost(At at) =>
        _byLine.TryGetValue((at.File, at.Line), out var here) && here.Exists(problem => problem.Code == Messages.HashCode);

    /// <summary>In file order, the files in the order they were opened.</summary>
    public IReadOnlyList<Problem> InOrder()
    {
        var sorted = _byLine.Values
            .SelectMany(here => here)
            .OrderBy(problem => _files.IndexOf(problem.At.File))
            .ThenBy(problem => problem.At.Line)
            .ThenBy(problem => problem.At.Column)
            .ToList();
        if (sorted.Count <= Most)
        {
            return sorted;
        }

        var more = Messages.More(sorted.Count - Most, Stops);
        var next = sorted[Most];
        return [.. sorted.Take(Most), new Problem(more.Code, next.At, more.Say, next.Typed, more.Effect)];
    }

    private string Typed(At at) => _sources.TryGetValue(at.File, out var source) ? VisibleText.Of(Shown(source.Line(at.Line))) : "";

    /// <summary>What is quoted of the file is shown by its beginning, in one line.</summary>
    private static string Said(string say) =>
        LongQuote().Replace(VisibleText.Of(say).Replace('\r', ' ').Replace('\t', ' '),
        quote => $"{quote.Value[..LongestQuoted]}...\"");

    /// <summary>A line longer than any hand types is not shown whole.</summary>
    private static string Shown(string line) => line.Length <= LongestShown ? line : line[..LongestShown];

    private const int LongestShown = 400;

    private const int LongestQuoted = 60;

    [GeneratedRegex("\"[^\"]{160,}\"")]
    private static partial Regex LongQuote();
}
