using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>The line of a job file that answers a fact.</summary>
/// <param name="Path"><c>liner.back</c>.</param>
/// <param name="Before">What the answer is written behind on that line: <c>left-back</c>, or the word of a second question. Else empty.</param>
/// <param name="IsList">The line holds all members of a list at once.</param>
public sealed record LinePath(string Path, string Before = "", bool IsList = false)
{
    /// <summary>Null: no line asks it.</summary>
    public static LinePath? Of(Vocabulary vocabulary, FactId fact, Part? part) =>
        fact == FactId.Method ? new LinePath("method")
        : vocabulary.Disciplines.FirstOrDefault(known => FactId.Code(known.Name) == fact) is { } code ? new LinePath(HeaderReader.KeyOf(code))
        : part is null ? null
        : part.Kind.IsList ? OfList(vocabulary, fact, part)
        : OfPart(part, fact.Reading == FactId.Presence ? null : part.Kind.Find(fact.Reading));

    public string Answer(string typed) => Before.Length == 0 ? typed : $"{Before} {typed}";

    private static LinePath OfList(Vocabulary vocabulary, FactId fact, Part part)
    {
        var stands = part.Kind.Stands.Split(".<")[0];
        var isSeen = new JobLayout(vocabulary).Find(stands)?.Lines.Any(line => line is Line.Seen seen && seen.Kind == part.Kind) == true;
        return part.Place is { } place && isSeen ? new LinePath($"{stands}.{place.Name}", IsList: true)
            : fact.Reading == FactId.Whole && isSeen ? new LinePath(stands + ".seen")
            : new LinePath(stands, IsList: true);
    }

    private static LinePath OfPart(Part part, ReadingKind? reading)
    {
        var kind = part.Kind;
        var word = reading is null || reading.Name == kind.Main || reading.Is == Form.Choice ? "" : reading.Name;
        return kind.Many == Many.PerPlace && part.Place is { } place
            ? kind.Stands.EndsWith(".<place>", StringComparison.Ordinal)
                ? new LinePath(kind.Stands.Replace("<place>", place.Name, StringComparison.Ordinal), word)
                : new LinePath(kind.Stands, $"{place.Name} {word}".Trim())
            : reading is not null && !kind.Stands.Contains('.', StringComparison.Ordinal) ? new LinePath($"{kind.Stands}.{reading.Name}")
            : new LinePath(kind.Stands, word);
    }
}
