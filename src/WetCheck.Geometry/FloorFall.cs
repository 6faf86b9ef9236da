using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>
/// Falls of a floor with a level rim and a point drain: rim over the run square to the wall, and rim over the distance to the corner.
/// Source of the formula: a plane through the rim of a wall and the drain; any general geometry text.
/// </summary>
internal static class FloorFall
{
    private const string Plane = "height of the floor at the wall, over the run square to it";
    private const string Fold = "height of the floor at the wall, over the distance from the drain to the corner";

    /// <summary>
    /// By the rim and, where it is not level, by the corners; of a floor that is no rectangle by its outline; and by
    /// levels read all over.
    /// </summary>
    public static Fact? OfFacet(Part part, ReadingKind kind, JobFacts facts)
    {
        var byCorners =
            Or(CornerFall.OfFacet(part, kind, facts),
            Or(OutlineFall.OfFacet(part, kind, facts), LevelFall.OfFacet(part, kind, facts)));
        return Sources(facts) is not { } sources ? byCorners : Derived.From(part, kind, Plane,
            known => Rise(known).Map(new FloorRuns(known[1], known[2]).To(part.Place!.Name), Interval.Quotient), sources) with
        {
            Also = byCorners,
        };
    }

    public static Fact? OfValley(Part part, ReadingKind kind, JobFacts facts)
    {
        var byCorner =
            Or(CornerFall.OfValley(part, kind, facts),
            Or(OutlineFall.OfValley(part, kind, facts), LevelFall.OfValley(part, kind, facts)));
        return Sources(facts) is not { } sources ? byCorner : Derived.From(part, kind, Fold,
            known => Rise(known).Map(new FloorRuns(known[1], known[2]).ToCorner(part.Place!.Name), Interval.Quotient), sources) with
        {
            Also = byCorner,
        };
    }

    private static Fact? Or(Fact? one, Fact? other) => one is null ? other : one with { Also = other };

    private static IReadOnlyList<Fact>? Sources(JobFacts facts) =>
        facts.Of("floor", "rim") is { } rim && facts.Of("shower", "drain at") is { } drain && facts.Of("shower", "size") is { } size
            ? [rim, drain, size]
            : null;

    private static Spread Rise(IReadOnlyList<Known> known) => Derived.Number(known[0]).Intersect(Interval.AtLeast(0));
}
