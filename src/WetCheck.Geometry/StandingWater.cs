using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>
/// The deepest water that certainly stands on a floor read by levels, when all that can has run to the drain. Points never tell that none
/// stands between them: where no low spot is certain, nothing is known, and a bucket of water is the other way to it.
/// </summary>
internal static class StandingWater
{
    private const string Explained =
        "the deepest low spot of the levels, under the lowest way from there to the drain; the sheet of levels shows where";

    /// <returns>Inches. Null where none is certain, so that nothing is asked of it.</returns>
    public static Fact? Of(Part part, ReadingKind kind, JobFacts facts) =>
        FloorSources.Of(facts, facts.Of("floor", "levels")) is { } sources
            && Derived.From(part, kind, Explained, Work, sources) is { OnPaper: Known.Number } found ? found : null;

    private static Spread Work(IReadOnlyList<Known> known) =>
        known[0] is Known.Levels levels && known[1] is Known.Pair drain && known[2] is Known.OneOf { Choice: "point" }
            && LevelFall.GrateOf(known[3], known[4]) is { } grate && LevelFall.Rectangle(known[5]) is { } outline
            && Deepest(LevelDoubts.Of(LevelsTold.Of(levels), outline).Kept, outline,
                new PlanPoint(FloorTold.Inches(drain.First), FloorTold.Inches(drain.Second)), grate) is { } spot
                ? new Spread(Interval.At(Exact(spot.Depth)), new Interval(Exact(spot.Least), Exact(spot.Most)))
                : Spread.Everything;

    private static LowSpot? Deepest(IReadOnlyList<LevelPoint> points, Outline outline, PlanPoint drain, Grate grate)
    {
        var drains = Enumerable.Range(0, points.Count).Where(at => SetOut.IsAtDrain([Grate.Point, grate], drain, points[at].At));
        return LowSpots.Of(new LevelSurface(points, outline), drains) is [{ IsCertain: true } spot, ..] ? spot : null;
    }

    private static Rational Exact(double inches) => (decimal)Math.Round(inches, 9);
}
