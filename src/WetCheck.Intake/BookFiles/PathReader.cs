using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads <c>reading</c>, <c>KIND.reading</c> and <c>job.reading</c>.</summary>
internal static class PathReader
{
    /// <summary>The path; null, with a problem, where it names nothing.</summary>
    public static Model.Path? Read(ScalarNode text, PartKind part, Vocabulary vocabulary, ProblemList problems)
    {
        var (kind, reading) = Split(text.Text);
        if (kind is null)
        {
            return Reading(text, reading, part, problems) is { } own ? new Model.Path(null, own) : null;
        }

        if (Lookup.In(vocabulary.Kinds, text with { Text = kind }, known => known.Name, "kind of part", problems) is not { } found)
        {
            return null;
        }

        if (found.Many != Many.One && !IsSelfOrAbove(found, part, vocabulary))
        {
            problems.Add(text.At, Messages.ListAsPath(found.Name));
            return null;
        }

        return Reading(text, reading, found, problems) is { } read ? new Model.Path(found.Name, read) : null;
    }

    /// <summary>The same without a word where it is no path at all, so that it may be a quantity.</summary>
    public static bool IsPath(string text, PartKind part, Vocabulary vocabulary)
    {
        var (kind, reading) = Split(text);
        return kind is null
            ? Names.Find(reading, part.Readings.Select(known => known.Name)) is not null
            : Names.Find(kind, vocabulary.Kinds.Select(known => known.Name)) is not null;
    }

    private static (string? Kind, string Reading) Split(string text)
    {
        var dot = text.IndexOf('.', StringComparison.Ordinal);
        return dot < 0 ? (null, text) : (text[..dot], text[(dot + 1)..]);
    }

    private static ReadingKind? Reading(ScalarNode text, string name, PartKind kind, ProblemList problems) =>
        Lookup.In(kind.Readings, text with { Text = name }, reading => reading.Name, $"reading of \"{kind.Name}\"", problems);

    private static bool IsSelfOrAbove(PartKind kind, PartKind part, Vocabulary vocabulary)
    {
        for (var (at, steps) = ((PartKind?)part, 0); at is not null && steps <= vocabulary.Kinds.Count; steps++)
        {
            if (at.Name == kind.Name)
            {
                return true;
            }

            at = at.Above is { } above ? vocabulary.Kind(above) : null;
        }

        return false;
    }
}
