using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>The line of a job file that answers a fact.</summary>
/// <param name="Path"><c>liner.back</c>; of one member of a list with its number on the line: <c>nails.left 2</c>.</param>
/// <param name="Before">What the answer is written behind on that line: <c>left-back</c>, or the word of a second
/// question. Else empty.</param>
/// <param name="IsList">The line holds all members of a list at once.</param>
public sealed record LinePath(string Path, string Before = "", bool IsList = false)
{
    /// <summary>Null: no line asks it.</summary>
    public static LinePath? Of(Vocabulary vocabulary, FactId fact, Part? part) =>
        fact == FactId.Method ? new LinePath("method")
        : vocabulary.Disciplines.FirstOrDefault(known => FactId.Code(known.Name) == fact) is { } code
            ? new LinePath(HeaderReader.KeyOf(code))
        : part is null ? null
        : part.Kind.IsList ? OfMember(vocabulary, fact, part)
        : OfPart(part, fact.Reading == FactId.Presence ? null : part.Kind.Find(fact.Reading));

    /// <summary>Of a member of a list: the line with all that stand there.</summary>
    public static LinePath OfList(Part member) =>
        new(member.Place is { } place ? $"{Section(member.Kind)}.{place.Name}" : Section(member.Kind), IsList: true);

    /// <summary>A line as a person names it, in the form that the log keeps; null where a job file has no such line.</summary>
    public static LinePath? Typed(Vocabulary vocabulary, string typed)
    {
        if (HeaderReader.Find(typed, vocabulary) is { } key)
        {
            return key is "method" or "stage" || vocabulary.Disciplines.Any(known => HeaderReader.KeyOf(known) == key)
                ? new LinePath(key) : null;
        }

        var layout = new JobLayout(vocabulary);
        if (MemberPath.Of(typed, layout) is { } member)
        {
            return new LinePath($"{Typed(vocabulary, member.Line)!.Path} {member.Index}");
        }

        return layout.Find(typed, out _) switch
        {
            (var section, { } line) => new LinePath(section.PathOf(line), IsList: line is not Line.Seen && line.Kind.IsList),
            (var section, null) => new LinePath(section.Name, IsList: section.Kinds().Any(kind => kind.IsList)),
            null => null,
        };
    }

    /// <summary>The list that a section's <c>seen</c> speaks of, where it has such a line.</summary>
    public static PartKind? ListIn(Vocabulary vocabulary, string section) =>
        new JobLayout(vocabulary).Find(section)?.Lines.OfType<Line.Seen>().FirstOrDefault()?.Kind;

    public string Answer(string typed) => Before.Length == 0 ? typed : $"{Before} {typed}";

    private static LinePath OfMember(Vocabulary vocabulary, FactId fact, Part part)
    {
        var line = OfList(part);
        return part.Index is { } index ? new LinePath($"{line.Path} {index}", Word(part.Kind, part.Kind.Find(fact.Reading)))
            : fact.Reading == FactId.Whole && IsSeen(vocabulary, part.Kind) ? new LinePath(Section(part.Kind) + ".seen")
            : line;
    }

    private static bool IsSeen(Vocabulary vocabulary, PartKind kind) =>
        new JobLayout(vocabulary).Find(Section(kind))?.Lines.Any(line => line is Line.Seen seen && seen.Kind == kind) == true;

    private static string Section(PartKind kind) => kind.Stands.Split(".<")[0];

    private static string Word(PartKind kind, ReadingKind? reading) =>
        reading is null || reading.Name == kind.Main || reading.Is == Form.Choice ? "" : reading.Name;

    private static LinePath OfPart(Part part, ReadingKind? reading)
    {
        var kind = part.Kind;
        var word = Word(kind, reading);
        return kind.Many == Many.PerPlace && part.Place is { } place
            ? kind.Stands.EndsWith(".<place>", StringComparison.Ordinal)
                ? new LinePath(kind.Stands.Replace("<place>", place.Name, StringComparison.Ordinal), word)
                : new LinePath(kind.Stands, $"{place.Name} {word}".Trim())
            : reading is not null && !kind.Stands.Contains('.', StringComparison.Ordinal) ? new LinePath($"{kind.Stands}.{reading.Name}")
            : new LinePath(kind.Stands, word);
    }
}
