using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>Which parts stand to a part as a relation says.</summary>
public static class Relations
{
    public static bool Holds(Relation relation, Part self, Part other) => relation.To switch
    {
        RelationTo.Below => other.Kind.Name == relation.Kind && other != self && other.Above is { } above && IsOrIsBelow(above, self),
        RelationTo.Behind => IsNeighbour(self, other) && (other.IsOther || self.IsOther || other.Index < self.Index),
        _ => IsNeighbour(self, other) && (other.IsOther || self.IsOther || other.Index > self.Index),
    };

    /// <summary>Above it in the tree, else the only one of its kind in the job.</summary>
    public static bool IsNearest(Part self, Part other, string kind) =>
        other.Kind.Name == kind && (self.Nearest(kind) is not { } above || above == other);

    /// <summary>The unnamed rest of a list may be many: it has itself for a neighbour.</summary>
    private static bool IsNeighbour(Part self, Part other) =>
        (other != self || self.IsOther) && other.Kind.Name == self.Kind.Name && other.Above == self.Above;

    private static bool IsOrIsBelow(Part part, Part top) => part == top || (part.Above is { } above && IsOrIsBelow(above, top));
}
