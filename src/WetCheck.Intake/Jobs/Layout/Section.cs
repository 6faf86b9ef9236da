using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>A name at the left edge of a job file, with the lines that may stand below it.</summary>
/// <param name="Part">The one part that stands here; its readings are lines. Null: the section is only a heading.</param>
/// <param name="List">A list that stands on the line of the section itself.</param>
internal sealed record Section(string Name, PartKind? Part, PartKind? List, IReadOnlyList<Line> Lines)
{
    /// <summary>By name, or by the letter of a side.</summary>
    public Line? Find(string name, Vocabulary vocabulary)
    {
        var folded = Names.Fold(name);
        return Lines.FirstOrDefault(line => Names.Fold(line.Name) == folded)
            ?? (PlaceNames.ByLetter(name, vocabulary) is { } place
                ? Lines.FirstOrDefault(line => line is Line.OfPlace at && at.Place.Name == place.Name) : null);
    }

    /// <summary>Every kind of part that stands here.</summary>
    public IEnumerable<PartKind> Kinds() => Lines.Select(line => line.Kind).Append(Part).Append(List).OfType<PartKind>().Distinct();

    public string PathOf(Line line) => $"{Name}.{line.Name}";
}

/// <summary>A line within a section.</summary>
internal abstract record Line(PartKind Kind, string Name)
{
    /// <summary>Answers one question about the one part of the section.</summary>
    public sealed record OfReading(PartKind Kind, ReadingKind Reading) : Line(Kind, Reading.Name);

    /// <summary>Answers for the part, or the members of a list, at a place.</summary>
    public sealed record OfPlace(PartKind Kind, Place Place) : Line(Kind, Place.Name);

    /// <summary>Answers for a part, or all parts of a kind, on one line.</summary>
    public sealed record OfKind(PartKind Kind, string Word) : Line(Kind, Word);

    /// <summary>Says whether a list is whole.</summary>
    public sealed record Seen(PartKind Kind) : Line(Kind, "seen");
}
