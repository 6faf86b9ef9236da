using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>Which parts a rule reads beside its own, as a constant of the network. Parts are identities: the join is by reference.</summary>
public sealed record Joins(RulePlan Plan)
{
    /// <summary>Another part is the nearest of a kind that the rule reads.</summary>
    public static bool Reads(Joins joins, Part self, Part other) => joins.Plan.Nearest.Exists(kind => Relations.IsNearest(self, other, kind));

    /// <summary>One of the rule's relations names another part.</summary>
    public static bool Relates(Joins joins, Part self, Part other) => joins.Plan.Relations.Any(relation => Relations.Holds(relation, self, other));
}
