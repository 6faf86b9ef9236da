using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Asking;

/// <summary>What was typed at a question, as answers to lines of the job file.</summary>
internal static class Meant
{
    private static readonly string[] s_notKnown = ["", "?", "don't know", "dont know", "not known"];

    /// <summary>Nobody knows: the question stays open.</summary>
    public static bool IsSkipped(string typed) => s_notKnown.Contains(Names.Fold(typed.Replace('\u2019', '\'')), StringComparer.Ordinal);

    /// <summary><c>again</c>, <c>again 3-1/4</c>: the answer before is mended. Null: that is not what was typed.</summary>
    public static string? Again(string typed) =>
        Names.Fold(typed) == "again" ? "" : typed.StartsWith("again ", StringComparison.OrdinalIgnoreCase)
            ? typed["again ".Length..].Trim() : null;

    /// <summary>"Are these all?" is answered with more of them: the same is asked again.</summary>
    public static bool IsMore(Question question, string typed) => IsSeen(question) && Names.Fold(typed) is not ("all" or "some" or "none");

    /// <param name="owed">All questions that are open, for answers that speak of all places.</param>
    /// <returns>Each with its own line, in the order they are kept.</returns>
    public static IReadOnlyList<(Question Question, string Read)> Of(Question question, string typed, Walk walk, IEnumerable<Question> owed)
    {
        if (IsSeen(question))
        {
            return [OfList(question, typed, walk)];
        }

        if (question.Look.Parts is not [{ Kind: { Many: Many.PerPlace } kind, Place: { } place }])
        {
            return [(question, question.Line.Answer(typed))];
        }

        var word = Names.Fold(typed.Split(' ', 2)[0]);
        if (word is "all" or "rest" && typed.Contains(' ', StringComparison.Ordinal))
        {
            var rest = typed[word.Length..].Trim();
            return [.. owed.Where(other => other.Key == question.Key || other.IsAlike(question))
                .Select(other => (other, other.Line.Answer(rest)))];
        }

        return question.Line.Before.Length > 0 && kind.Places.Any(named => StartsWith(typed, named.Name)) ? [(question, typed)]
            : StartsWith(typed, place.Name) ? [(question, question.Line.Answer(typed[place.Name.Length..].Trim()))]
            : [(question, question.Line.Answer(typed))];
    }

    private static bool IsSeen(Question question) => question.Line.Path.EndsWith(".seen", StringComparison.Ordinal);

    /// <summary>All, some; none, of which no more is meant where some are named; or more of them, each with its place.</summary>
    private static (Question, string) OfList(Question question, string typed, Walk walk)
    {
        var section = new LinePath(question.Line.Path[..^".seen".Length], IsList: true);
        if (LinePath.ListIn(walk.Book.Vocabulary, section.Path) is not { } kind)
        {
            return (question, question.Line.Answer(typed));
        }

        return !IsMore(question, typed)
            ? Names.Same(typed, "none")
                ? walk.Job.Parts.Any(part => part.Part.Kind == kind && part.Part.Index is not null) ? (question, "all")
                    : (question with { Line = section }, typed)
                : (question, typed)
            : (question with { Line = section }, Placed(typed, kind));
    }

    /// <summary>"left 2 below, 3 above": an item without a place is at that of the one before.</summary>
    private static string Placed(string typed, PartKind kind)
    {
        var at = "";
        var items = new List<string>();
        foreach (var item in typed.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var named = kind.Places.FirstOrDefault(place => StartsWith(item, place.Name) || StartsWith(item, place.Letters));
            at = named?.Name ?? at;
            items.Add(named is null && at.Length > 0 ? $"{at} {item}" : item);
        }

        return string.Join(", ", items);
    }

    private static bool StartsWith(string typed, string place) =>
        place.Length > 0 && Names.Fold(typed).StartsWith(Names.Fold(place) + " ", StringComparison.Ordinal);
}
