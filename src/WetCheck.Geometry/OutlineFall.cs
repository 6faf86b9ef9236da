using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>
/// Falls of a floor that is told by its corners: a level rim, a point drain that sees it whole. Only of walls and
/// corners that bear a side's
/// name alone; of several on one side none is the one that a tape was held to. Source of the formula: any general geometry text.
/// </summary>
internal static class OutlineFall
{
    private const string Plane = "height of the floor at the wall, over the run square to it, by the corners of the floor";
    private const string Fold =
        "height of the floor at the wall, over the distance from the drain to the corner, by the corners of the floor";

    /// <returns>Null where no corners are told.</returns>
    public static Fact? OfFacet(Part part, ReadingKind kind, JobFacts facts) =>
        Of(part, kind, facts, Plane, (floor, drain) => floor.RunTo(part.Place!.Name, drain));

    /// <returns>Null where no corners are told.</returns>
    public static Fact? OfValley(Part part, ReadingKind kind, JobFacts facts) =>
        Of(part, kind, facts, Fold, (floor, drain) => floor.WayTo(part.Place!.Name, drain));

    private static Fact? Of(Part part, ReadingKind kind, JobFacts facts, string explained, Func<NamedWalls, Known.Pair, Spread> run) =>
        facts.Of("floor", "rim") is { } rim && facts.Of("shower", "drain at") is { } drain
            && facts.Of("shower", "outline") is { OnPaper: Known.Corners } outline
            ? Derived.From(part, kind, explained, known => known is [_, Known.Pair at, Known.Corners { Points: var corners }]
                ? Derived.Number(known[0]).Intersect(Interval.AtLeast(0)).Map(run(new NamedWalls(corners), at), Interval.Quotient)
                : Spread.Everything, rim, drain, outline)
            : null;
}
