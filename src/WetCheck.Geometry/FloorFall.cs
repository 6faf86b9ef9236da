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

    public static Fact? OfFacet(Part part, ReadingKind kind, JobFacts facts) => Sources(facts) is not { } sources
        ? null
        : Derived.From(part, kind, Plane, known => Rise(known).Map(Run(part.Place!.Name, known), Interval.Quotient), sources);

    public static Fact? OfValley(Part part, ReadingKind kind, JobFacts facts) => Sources(facts) is not { } sources
        ? null
        : Derived.From(part, kind, Fold, known => Rise(known).Map(Distance(part.Place!.Name, known), Interval.Quotient), sources);

    private static IReadOnlyList<Fact>? Sources(JobFacts facts) =>
        facts.Of("floor", "rim") is { } rim && facts.Of("shower", "drain at") is { } drain && facts.Of("shower", "size") is { } size
            ? [rim, drain, size]
            : null;

    private static Spread Rise(IReadOnlyList<Known> known) => Derived.Number(known[0]).Intersect(Interval.AtLeast(0));

    private static Spread Distance(string corner, IReadOnlyList<Known> known)
    {
        var across = Run(corner is "left jamb" or "left-back" ? "left" : "right", known);
        var along = Run(corner is "left-back" or "right-back" ? "back" : "entry", known);
        return across.Map(along, Root.OfSumOfSquares);
    }

    /// <summary>Only a finished size tells where the finished walls stand.</summary>
    private static Spread Run(string side, IReadOnlyList<Known> known)
    {
        if (known[1] is not Known.Pair drain)
        {
            return Spread.Within(Interval.AtLeast(0));
        }

        var size = known[2] as Known.Pair;
        var run = side switch
        {
            "left" => drain.First,
            "entry" => drain.Second,
            _ when size is not { Between: Between.Finished } => Spread.Everything,
            "right" => size!.First - drain.First,
            _ => size!.Second - drain.Second,
        };
        return run.Intersect(Interval.AtLeast(0));
    }
}
