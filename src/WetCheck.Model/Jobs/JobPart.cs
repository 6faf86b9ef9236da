namespace WetCheck.Model;

/// <summary>A part and all that the file and the log say of it.</summary>
/// <param name="Said">Yes: the file speaks of it. No: it says <c>none</c>. Unknown: it is silent.</param>
/// <param name="Readings">By name; all readings of one fact, in order of time, then line. What was replaced is not among them.</param>
public sealed record JobPart(Part Part, Tri Said, At At, IReadOnlyDictionary<string, IReadOnlyList<Reading>> Readings)
{
    public static readonly IReadOnlyDictionary<string, IReadOnlyList<Reading>> Nothing = new Dictionary<string, IReadOnlyList<Reading>>();

    public IReadOnlyList<Reading> Of(string reading) => Readings.TryGetValue(reading, out var all) ? all : [];
}

/// <summary>Whether a list of parts is whole.</summary>
/// <param name="Whole">Yes: <c>seen: all</c>, or the list says <c>none</c>. Unknown: anything else.</param>
public sealed record JobList(PartKind Kind, Tri Whole, At At);
