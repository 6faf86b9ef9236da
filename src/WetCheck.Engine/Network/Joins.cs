using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>
/// Which parts a rule reads beside its own, as a constant of the network: equal ones share their nodes. Parts are identities: the
/// join is by reference.
/// </summary>
internal sealed class Joins(RulePlan plan) : IEquatable<Joins>
{
    private readonly HashSet<Relation> _relations = [.. plan.Relations];

    /// <summary>Kinds of which the nearest part is read.</summary>
    public Names Nearest { get; } = Names.Of(plan.Nearest);

    /// <summary>Kinds of the parts that the relations name.</summary>
    public Names RelatedKinds { get; } =
        Names.Of(plan.Relations.Select(relation => relation.Kind ?? plan.Rule.Part.Name).Distinct()
        .Order(StringComparer.Ordinal));

    /// <summary>Another part is the nearest of a kind that the rule reads.</summary>
    public static bool Reads(Joins joins, Part self, Part other) => joins.Nearest.Any(kind => Relations.IsNearest(self, other, kind));

    /// <summary>One of the rule's relations names another part.</summary>
    public static bool Relates(Joins joins, Part self, Part other) =>
        joins._relations.Any(relation => Relations.Holds(relation, self, other));

    public bool Equals(Joins? other) => other is not null && Nearest == other.Nearest && _relations.SetEquals(other._relations);

    public override bool Equals(object? obj) => Equals(obj as Joins);

    public override int GetHashCode() => Nearest.GetHashCode();
}
