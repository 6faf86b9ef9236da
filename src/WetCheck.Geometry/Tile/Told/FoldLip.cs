using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>
/// The worst step between two floor tiles over a fold, by the job's own grid on a level rim. Everything of the plan
/// must be told as one value;
/// the step grows in proportion with the rim, so the rim's bounds are the step's. Half a mark of the tool that a dry
/// lay is read with comes on top:
/// a finer verdict than a hand can feel would only cry wolf.
/// </summary>
internal static class FoldLip
{
    private const string Explained =
        "each tile on the plane nearest to the bed under it; the worst step between two neighbours, by the grid told";

    private static readonly string[] s_grid = ["floor tile", "floor tile long", "floor joint", "grid from", "grid"];

    /// <returns>Null where the grid is not told, or no part of the floor: a dry lay is the other way to it.</returns>
    public static Fact? Of(Part part, ReadingKind kind, JobFacts facts) =>
        FloorSources.Of(facts, facts.Of("floor", "rim"), s_grid.Select(reading => facts.Of("tile", reading))) is { } sources
            ? Derived.From(part, kind, Explained, known => Work(known, kind.Tool?.HalfMark(Measure.Length, metric: false) ?? 0), sources)
            : null;

    private static Spread Work(IReadOnlyList<Known> known, Rational half) =>
        known is [_, Known.Pair drain, Known.OneOf { Choice: "point" }, _, Known.OneOf { Choice: "square" }, _, _, _,
            _, Known.Pair from, Known.OneOf { Choice: var way }]
        && One(known[3]) is { } across && FloorTold.Of(known[5]) is { } outline
        && One(known[6]) is { } wide && One(known[7]) is { } along && One(known[8]) is { } joint
        && Steps(outline, At(drain), Grate.Square(across / 2),
            new TileGrid(along, wide, joint, At(from), way == "on the diagonal" ? 45 : 0)) is { } perRim
            ? Banded(Derived.Number(known[0]).Intersect(Interval.AtLeast(0))
                .Map(Spread.Exactly((decimal)Math.Round(perRim, 9)), Interval.Product), half)
            : Spread.Everything;

    private static Spread Banded(Spread step, Rational half) =>
        new Spread(step.AsRead, step.Band.Widen(half)).Intersect(Interval.AtLeast(0));

    /// <summary>The worst step on a rim of one inch.</summary>
    private static double? Steps(Outline outline, PlanPoint drain, Grate grate, TileGrid grid) =>
        outline.IsSeenWholeFrom(drain) && outline.Walls.All(wall => Pan.Run(wall, drain, grate) > 1e-9)
            ? new TileMisfit([.. PanFacets.Of(new Pan(outline, drain, grate), 1).Where(facet => facet.Area > 1e-9)], grid).WorstStep
            : null;

    private static PlanPoint At(Known.Pair pair) => new(FloorTold.Inches(pair.First), FloorTold.Inches(pair.Second));

    private static double? One(Known known) =>
        known is Known.Number { Spread.AsRead: { IsPoint: true, Lo: { Sign: > 0 } inches } } ? inches.Approximate
        : null;
}
