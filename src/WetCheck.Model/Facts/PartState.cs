namespace WetCheck.Model;

/// <summary>A part and all that is known of it. Compared by reference; replaced whole when anything changes.</summary>
public sealed class PartState(
    Part part, Tri exists, FactId presence, IReadOnlyDictionary<string, Fact> facts, Surroundings? surroundings = null)
{
    public Part Part { get; } = part;

    public string Kind => Part.Kind.Name;

    /// <summary>Whether it is on this job.</summary>
    public Tri Exists { get; } = exists;

    /// <summary>What would tell whether it is: its own presence, that of a part above, or a list's being whole.</summary>
    public FactId Presence { get; } = presence;

    public IReadOnlyDictionary<string, Fact> Facts { get; } = facts;

    /// <summary>Of the job itself: method, codes, levels. Null for every other part.</summary>
    public Surroundings? Surroundings { get; } = surroundings;
}

/// <summary>What holds for the whole job.</summary>
/// <param name="Methods">One when stated; else every method that what is told of the parts leaves open.</param>
/// <param name="Codes">The editions that may apply, by discipline.</param>
public sealed record Surroundings(IReadOnlyList<Method> Methods, IReadOnlyDictionary<string, PossibleCodes> Codes, Levels Levels);

/// <summary>The codes that may apply in one discipline.</summary>
/// <param name="Stated">What the job says; null: nothing.</param>
/// <param name="Tried">One when stated; else every family that the job's units reach.</param>
public sealed record PossibleCodes(StatedCode? Stated, IReadOnlyList<CodeRange> Tried);
