using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>What a file says, part by part, while it is being read.</summary>
internal sealed class Draft
{
    private readonly Dictionary<(string Kind, string? Place, int? Index), PartNotes> _parts = [];
    private readonly Dictionary<(string Kind, string? Place), int> _last = [];

    public Header Header { get; set; } = new();

    public Dictionary<string, At> Where { get; } = new(StringComparer.Ordinal);

    /// <summary>What the file says of lists: <c>seen: all</c>, or that there are none.</summary>
    public Dictionary<string, (Tri Whole, At At)> Lists { get; } = new(StringComparer.Ordinal);

    /// <summary>Lists of which a member could not be read: nobody can say that they are whole.</summary>
    public HashSet<string> Torn { get; } = new(StringComparer.Ordinal);

    public PartNotes Of(PartKind kind, Place? place = null, int? index = null)
    {
        var key = (kind.Name, place?.Name, index);
        if (!_parts.TryGetValue(key, out var notes))
        {
            _parts[key] = notes = new PartNotes(place, index);
        }

        return notes;
    }

    public PartNotes? Find(PartKind kind, Place? place) => _parts.GetValueOrDefault((kind.Name, place?.Name, null));

    public IEnumerable<(string Kind, PartNotes Notes)> All => _parts.Select(pair => (pair.Key.Kind, pair.Value));

    /// <summary>The named members of a list, as the file has them.</summary>
    public IEnumerable<PartNotes> Members(PartKind kind) =>
        _parts.Where(pair => pair.Key.Kind == kind.Name && pair.Value.Index is not null).Select(pair => pair.Value);

    /// <summary>
    /// The next place in a list: among those of a place, in an ordered list among all. One that can't be read has its
    /// own too.
    /// </summary>
    public int NextIndex(PartKind kind, Place? place)
    {
        var key = (kind.Name, kind.Many == Many.Ordered ? null : place?.Name);
        return _last[key] = _last.GetValueOrDefault(key) + 1;
    }

    /// <summary>Forgets one member of a list; the others keep their numbers.</summary>
    public void Forget(PartKind kind, Place? place, int index) => _parts.Remove((kind.Name, place?.Name, index));

    /// <summary>Forgets the parts of a kind, all or those at a place.</summary>
    public void Forget(PartKind kind, Place? place = null)
    {
        foreach (var key in _parts.Keys.Where(key => key.Kind == kind.Name && (place is null || key.Place == place.Name)).ToList())
        {
            _parts.Remove(key);
            _last.Remove((key.Kind, key.Place));
        }
    }
}

/// <summary>What a file says of one part.</summary>
internal sealed class PartNotes(Place? place, int? index)
{
    public Place? Place { get; } = place;

    public int? Index { get; } = index;

    public At? At { get; private set; }

    /// <summary>A line says that it is there, or answers a question about it.</summary>
    public bool IsThere { get; private set; }

    /// <summary>A line says <c>none</c>.</summary>
    public At? NoneAt { get; private set; }

    public Dictionary<string, List<Reading>> Readings { get; } = new(StringComparer.Ordinal);

    public void There(At at)
    {
        IsThere = true;
        At ??= at;
    }

    public void None(At at)
    {
        NoneAt = at;
        At ??= at;
    }

    public void Add(string reading, Reading read)
    {
        There(read.At);
        if (!Readings.TryGetValue(reading, out var all))
        {
            Readings[reading] = all = [];
        }

        all.Add(read);
    }
}
