using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>The sections and lines of a job file, as the vocabulary's <c>stands:</c> lay them out.</summary>
internal sealed class JobLayout
{
    private const string PlaceSlot = "<place>";

    public JobLayout(Vocabulary vocabulary)
    {
        Vocabulary = vocabulary;
        Sections = [.. vocabulary.Kinds.GroupBy(kind => SectionOf(kind.Stands), StringComparer.Ordinal)
            .Select(group => Make(group.Key, [.. group]))];
    }

    public Vocabulary Vocabulary { get; }

    /// <summary>In walking order.</summary>
    public IReadOnlyList<Section> Sections { get; }

    public Section? Find(string name) => Sections.FirstOrDefault(section => Names.Same(section.Name, name));

    /// <summary>A line, or a section alone, by its path: <c>liner.right</c>, <c>curb</c>.</summary>
    public (Section Section, Line? Line)? Find(string path, out bool isSectionKnown)
    {
        var dot = path.IndexOf('.', StringComparison.Ordinal);
        var section = Find(dot < 0 ? path : path[..dot]);
        isSectionKnown = section is not null;
        return section is null ? null
            : dot < 0 ? (section, null)
            : section.Find(path[(dot + 1)..].Trim(), Vocabulary) is { } line ? (section, line)
            : null;
    }

    private static string SectionOf(string stands) => stands.Split('.')[0];

    private static Section Make(string name, IReadOnlyList<PartKind> kinds)
    {
        var part = kinds.FirstOrDefault(kind => kind.Stands == name && kind.Many == Many.One);
        var list = kinds.FirstOrDefault(kind => kind.Stands == name && kind.IsList);
        var lines = new List<Line>();
        foreach (var kind in kinds)
        {
            var word = kind.Stands[name.Length..].TrimStart('.');
            if (word == PlaceSlot)
            {
                lines.AddRange(kind.IsList ? [new Line.Seen(kind)] : Array.Empty<Line>());
                lines.AddRange(kind.Places.Select(place => new Line.OfPlace(kind, place)));
            }
            else if (word.Length > 0)
            {
                lines.Add(new Line.OfKind(kind, word));
            }
            else if (kind.Many == Many.One)
            {
                lines.AddRange(kind.Readings.Where(IsTyped).Select(reading => new Line.OfReading(kind, reading)));
            }
        }

        return new Section(name, part, list, lines);
    }

    private static bool IsTyped(ReadingKind reading) => !reading.Derived && reading.Is != Form.Conclusion;
}
