using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Makes the job of a draft: every kind of the vocabulary has its parts, blank ones too.</summary>
internal sealed class Assembly
{
    private readonly Draft _draft;
    private readonly JobLayout _layout;
    private readonly At _top;
    private readonly Dictionary<(string Kind, string? Place), Part> _parts = [];
    private readonly List<(Part Part, PartNotes? Notes)> _all = [];

    private Assembly(Draft draft, JobLayout layout, string file)
    {
        _draft = draft;
        _layout = layout;
        _top = new At(file, 1, 1);
    }

    public static Job Make(Draft draft, JobLayout layout, string file)
    {
        var assembly = new Assembly(draft, layout, file);
        foreach (var kind in layout.Vocabulary.Kinds)
        {
            assembly.AddKind(kind);
        }

        return assembly.Job(file);
    }

    private void AddKind(PartKind kind)
    {
        switch (kind.Many)
        {
            case Many.One:
                _all.Add((PartOf(kind, null), _draft.Find(kind, null)));
                break;
            case Many.PerPlace:
                _all.AddRange(kind.Places.Select(place => (PartOf(kind, place), _draft.Find(kind, place))));
                break;
            default:
                foreach (var member in _draft.Members(kind)
                    .OrderBy(member => member.Place is null ? 0 : PlaceOrder(kind, member.Place))
                    .ThenBy(member => member.Index))
                {
                    _all.Add((new Part(kind, AboveOf(kind, member.Place), member.Place, member.Index), member));
                }

                if (Whole(kind) != Tri.Yes)
                {
                    _all.Add((new Part(kind, AboveOf(kind, null), isOther: true), null));
                }

                break;
        }
    }

    private static int PlaceOrder(PartKind kind, Place place) => kind.Places.ToList().IndexOf(place);

    private Part PartOf(PartKind kind, Place? place)
    {
        var key = (kind.Name, place?.Name);
        if (!_parts.TryGetValue(key, out var part))
        {
            _parts[key] = part = new Part(kind, AboveOf(kind, place), place);
        }

        return part;
    }

    /// <summary>The part above: the one of its kind, or the one at the same place.</summary>
    private Part? AboveOf(PartKind kind, Place? place)
    {
        var above = kind.Above is null ? (kind.Name == JobName ? null : JobName) : kind.Above;
        return above is not null && _layout.Vocabulary.Kind(above) is { } found
            ? found.Many == Many.One ? PartOf(found, null) : place is not null && found.Many == Many.PerPlace
                && found.Places.Contains(place) ? PartOf(found, place) : null
            : null;
    }

    private const string JobName = "job";

    private Tri Whole(PartKind kind) =>
        _draft.Torn.Contains(kind.Name) ? Tri.Unknown : _draft.Lists.TryGetValue(kind.Name, out var said) ? said.Whole : Tri.Unknown;

    private Job Job(string file)
    {
        var there = new HashSet<Part>();
        foreach (var (part, notes) in _all.Where(pair => pair.Notes?.IsThere == true))
        {
            for (var at = part; at is not null && there.Add(at); at = at.Above)
            {
            }
        }

        var header = _draft.Header;
        var where = WhereAll();
        return new Job(
            header.Name,
            file,
            header.Method,
            header.Stage,
            header.Metric,
            header.Codes,
            [.. _all.Select(pair => PartOf(pair.Part, pair.Notes, there.Contains(pair.Part), where))],
            [.. _layout.Vocabulary.Kinds.Where(kind => kind.IsList).Select(kind => ListOf(kind, where))],
            header.ReadingsBy,
            header.Notes,
            where)
        {
            Local = header.Local,
        };
    }

    private JobPart PartOf(Part part, PartNotes? notes, bool isThere, IReadOnlyDictionary<string, At> where)
    {
        var said = isThere ? Tri.Yes : notes?.NoneAt is not null ? Tri.No : Tri.Unknown;
        if (part.Kind.Name == JobName)
        {
            said = Tri.Yes;
        }

        var readings = notes is null ? JobPart.Nothing : InOrder(notes, _top.File);
        return new JobPart(part, said, notes?.At ?? where.GetValueOrDefault(PathOf(part)) ?? _top, OutlinedSize.Counted(readings));
    }

    internal static IReadOnlyDictionary<string, IReadOnlyList<Reading>> InOrder(PartNotes notes, string file) =>
        notes.Readings.ToDictionary(pair => pair.Key, pair => InOrder(pair.Value, file), StringComparer.Ordinal);

    /// <summary>By date, those without one first; then those of the job file before those of the log, and by line.</summary>
    private static IReadOnlyList<Reading> InOrder(List<Reading> readings, string file) =>
        [.. readings.OrderBy(reading => reading.Date is null ? DateTimeOffset.MinValue : Dates.Read(reading.Date))
            .ThenBy(reading => reading.At.File != file).ThenBy(reading => reading.At.Line)
            .ThenBy(reading => reading.At.Column)];

    private JobList ListOf(PartKind kind, IReadOnlyDictionary<string, At> where) => new(
        kind,
        Whole(kind),
        _draft.Lists.TryGetValue(kind.Name, out var said) ? said.At : where.GetValueOrDefault(kind.Stands.Split('.')[0]) ?? _top);

    private static string PathOf(Part part) =>
        part.Place is { } place ? part.Kind.Stands.Replace("<place>", place.Name, StringComparison.Ordinal)
        : part.Kind.Stands.Split('.')[0];

    /// <summary>Every line there could be: where it stands, else its section, else the top.</summary>
    private Dictionary<string, At> WhereAll()
    {
        var where = new Dictionary<string, At>(_draft.Where, StringComparer.Ordinal);
        foreach (var key in HeaderReader.Keys(_layout.Vocabulary))
        {
            where.TryAdd(key, _top);
        }

        foreach (var section in _layout.Sections)
        {
            where.TryAdd(section.Name, _top);
            foreach (var line in section.Lines)
            {
                where.TryAdd(section.PathOf(line), where[section.Name]);
            }
        }

        return where;
    }
}
