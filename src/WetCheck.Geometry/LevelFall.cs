using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>
/// Falls of a rectangular floor by level readings: as read the least squares plane, bounded by every plane within half
/// a mark of all readings of
/// the facet. Any source that is not told leaves the fall unknown, so that a set of readings taken away takes its verdict with it.
/// </summary>
internal static class LevelFall
{
    private const string Plane =
        "plane through the levels between wall and drain, square to the wall; bounds of every plane within half a mark of each of them";
    private const string Fold =
        "planes through the levels on both sides of the fold; bounds of every plane within half a mark of each of them";

    /// <summary>As walls and corners stand in <see cref="Outline.Rectangle"/>.</summary>
    private static readonly string[] s_walls = ["entry", "right", "back", "left"];
    private static readonly string[] s_corners = ["left jamb", "right jamb", "right-back", "left-back"];

    public static Fact? OfFacet(Part part, ReadingKind kind, JobFacts facts) => Of(part, kind, facts, Plane, (floor, outline, points) =>
        Array.IndexOf(s_walls, part.Place!.Name) is var wall && floor.Of(points)[wall] is { Points.Count: > 0 } facet
            ? facet.Along(outline.Walls[wall].Inward * -1) : null);

    public static Fact? OfValley(Part part, ReadingKind kind, JobFacts facts) => Of(part, kind, facts, Fold, (floor, _, points) =>
        floor.Fold(Array.IndexOf(s_corners, part.Place!.Name), floor.Of(points)));

    private static Fact? Of(Part part, ReadingKind kind, JobFacts facts, string explained, Func<FloorFacets, Outline,
        IReadOnlyList<LevelPoint>, FallBounds?> fall)
    {
        return FloorSources.Of(facts, facts.Of("floor", "levels")) is { } sources
            ? Derived.From(part, kind, explained, Work, sources) : null;

        Spread Work(IReadOnlyList<Known> known) =>
            known[0] is Known.Levels levels && known[1] is Known.Pair drain && known[2] is Known.OneOf { Choice: "point" }
                && GrateOf(known[3], known[4]) is { } grate && Rectangle(known[5]) is { } outline
                && Floor(outline, new PlanPoint(FloorTold.Inches(drain.First), FloorTold.Inches(drain.Second)), grate) is { } floor
                && fall(floor, outline, LevelDoubts.Of(LevelsTold.Of(levels), outline).Kept) is { } bounds
                    ? Spread(bounds)
                    : Model.Spread.Everything;
    }

    /// <summary>Set out to the drain's middle or to its grate: nobody tells, so both.</summary>
    private static FloorFacets? Floor(Outline outline, PlanPoint drain, Grate grate) =>
        outline.IsSeenWholeFrom(drain) && outline.Walls.All(wall => Pan.Run(wall, drain, grate) > 1e-9)
            ? new FloorFacets(outline, drain, [Grate.Point, grate]) : null;

    internal static Grate? GrateOf(Known across, Known shape) => (across, shape) switch
    {
        (Known.Number { Spread.AsRead: { IsPoint: true, Lo: { Sign: > 0 } wide } },
            Known.OneOf { Choice: "square" }) => Grate.Square(wide.Approximate / 2),
        (Known.Number { Spread.AsRead: { IsPoint: true, Lo: { Sign: > 0 } wide } }, Known.OneOf { Choice: "round" }) =>
            Grate.Round(wide.Approximate / 2),
        _ => null,
    };

    internal static Outline? Rectangle(Known told) => told switch
    {
        Known.Pair { Between: Between.Finished, Floor: null } size =>
            Outline.Rectangle(FloorTold.Inches(size.First), FloorTold.Inches(size.Second)),
        Known.Corners { Points.All: { Count: 4 } corners } when corners.All(at =>
            (at.FromLeft.Sign == 0 || at.FromLeft == Widest(corners))
            && (at.FromEntry.Sign == 0 || at.FromEntry == Deepest(corners))) =>
            Outline.Rectangle(Widest(corners).Approximate, Deepest(corners).Approximate),
        _ => null,
    };

    private static Rational Widest(IReadOnlyList<(Rational FromLeft, Rational FromEntry)> corners) => corners.Max(at => at.FromLeft);

    private static Rational Deepest(IReadOnlyList<(Rational FromLeft, Rational FromEntry)> corners) => corners.Max(at => at.FromEntry);

    /// <summary>Outward to a billionth, so that no bound cuts off what it should hold.</summary>
    private static Spread Spread(FallBounds fall)
    {
        const double fine = 1e9;
        Rational? least = double.IsFinite(fall.Least) ? (decimal)(Math.Floor(fall.Least * fine) / fine) : null;
        Rational? most = double.IsFinite(fall.Most) ? (decimal)(Math.Ceiling(fall.Most * fine) / fine) : null;
        var band = new Interval(least, most);
        return fall.Estimate is { } read
            ? new Spread(Interval.At((decimal)Math.Round(read, 9))
            .Intersect(band) is { IsEmpty: false } inside ? inside : band, band) : Model.Spread.Within(band);
    }
}
