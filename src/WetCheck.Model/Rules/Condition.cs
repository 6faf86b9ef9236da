namespace WetCheck.Model;

/// <summary>What a rule asks of a part. There is no negation, no count and no formula: that keeps the promise.</summary>
public abstract record Condition(At At)
{
    public sealed record All(IReadOnlyList<Condition> Of, At At) : Condition(At);

    public sealed record AnyOf(IReadOnlyList<Condition> Of, At At) : Condition(At);

    /// <summary>At least one of the related parts meets it.</summary>
    public sealed record Some(Relation Of, Condition Meets, At At) : Condition(At);

    /// <summary>All of the related parts meet it.</summary>
    public sealed record Each(Relation Of, Condition Meets, At At) : Condition(At);

    /// <summary>A reading is one of some choices. Also of a conclusion: <c>yes</c>.</summary>
    public sealed record Is(Path Path, IReadOnlyList<string> OneOf, At At) : Condition(At);

    /// <summary>The code of a discipline is one of some editions.</summary>
    public sealed record CodeIs(string Discipline, IReadOnlyList<CodeRange> OneOf, At At) : Condition(At);

    /// <summary>The method is one of some, by name.</summary>
    public sealed record MethodIs(IReadOnlyList<string> OneOf, At At) : Condition(At);

    /// <summary>The part stands at one of some places, by name.</summary>
    public sealed record PlaceIs(IReadOnlyList<string> OneOf, At At) : Condition(At);

    /// <summary>A number held against another. Two bounds on one reading are two of these in an all-of.</summary>
    public sealed record Compare(Path Path, Comparison By, Operand To, At At) : Condition(At);

    /// <summary>This and all conditions within it, outermost first.</summary>
    public IEnumerable<Condition> Parts() => this switch
    {
        All all => all.Of.SelectMany(c => c.Parts()).Prepend(this),
        AnyOf any => any.Of.SelectMany(c => c.Parts()).Prepend(this),
        Some some => some.Meets.Parts().Prepend(this),
        Each each => each.Meets.Parts().Prepend(this),
        _ => [this],
    };
}

/// <summary>A reading, of the part itself (<see cref="Kind"/> null) or of the nearest part of a kind.</summary>
public sealed record Path(string? Kind, ReadingKind Reading);

/// <summary>Which other parts: those of a kind below this one, or its neighbours in an ordered list.</summary>
public sealed record Relation(RelationTo To, string? Kind = null);

public enum RelationTo { Below, Behind, InFront }

public enum Comparison { AtLeast, AtMost, Over, Under }

/// <summary>What a number is held against. A height is held against a height: <paramref name="Datum"/> says above what.</summary>
public abstract record Operand(string? Datum)
{
    public sealed record Fixed(Quantity Quantity, string? Datum = null) : Operand(Datum);

    /// <summary>The limit of the version in force.</summary>
    public sealed record Limit(string? Datum = null) : Operand(Datum);

    public sealed record Of(Path Path) : Operand((string?)null);
}
