namespace WetCheck.Geometry;

/// <summary>All changes that make a floor fit for its limits, each worked out, the cheapest first.</summary>
public static class WaysOut
{
    public static IReadOnlyList<WayOut> Of(Outline outline, PlanPoint drain, Grate grate, FallLimits limits)
    {
        IEnumerable<WayOut?> ways =
        [
            Dipped(outline, drain, grate, limits),
            Moved(outline, drain, grate, limits),
            .. Planes(outline, limits),
            Doubled(outline, limits),
            .. Unseen(outline, drain, limits),
        ];
        return [.. ways.OfType<WayOut>().OrderBy(way => way.Cost)];
    }

    private static bool Sees(Outline outline, PlanPoint drain, Grate grate) =>
        outline.Walls.All(wall => Pan.Run(wall, drain, grate) > 1e-9);

    private static WayOut.DipRim? Dipped(Outline outline, PlanPoint drain, Grate grate, FallLimits limits) =>
        Sees(outline, drain, grate) && RimDip.Of(new Pan(outline, drain, grate), limits) is { } rim ? new(rim) : null;

    private static WayOut.MoveDrain? Moved(Outline outline, PlanPoint drain, Grate grate, FallLimits limits)
    {
        if (DrainRegion.Of(outline, grate, limits) is not { } region || region.Nearest(drain) is var to && to == drain)
        {
            return null;
        }

        return new(to, (to - drain).Length, new Pan(outline, to, grate).RimWindow(limits).Least);
    }

    /// <summary>
    /// Along the wall that leaves the shortest way down, of those that a channel fits: the floor lies whole on its
    /// inner side.
    /// </summary>
    private static IEnumerable<WayOut?> Planes(Outline outline, FallLimits limits) => outline.Walls
        .Select((wall, at) => (Wall: at, Depths: outline.Corners.Select(wall.Distance)))
        .Where(one => one.Depths.All(depth => depth > -1e-9))
        .Select(one => (one.Wall, Depth: one.Depths.Max()))
        .OrderBy(one => one.Depth)
        .Take(1)
        .Select(one => new WayOut.OnePlane(one.Wall, one.Depth, limits.Least * one.Depth, limits.Most * one.Depth));

    private static WayOut.TwoDrains? Doubled(Outline outline, FallLimits limits)
    {
        var cuts = Enumerable.Range(0, outline.Corners.Count).Where(outline.IsInsideOut)
            .SelectMany(corner => FloorCut.FromCorner(outline, corner)).Prepend(FloorCut.Across(outline));
        return cuts.OfType<FloorCut>().Select(cut => Doubled(cut, limits)).OfType<WayOut.TwoDrains>().MinBy(way => way.Rim);
    }

    /// <summary>Both parts share the ridge, so they share the rim.</summary>
    private static WayOut.TwoDrains? Doubled(FloorCut cut, FallLimits limits)
    {
        var places = cut.Parts.Select(part => new Strain(part, Grate.Point, limits.Measure).Best().Place).ToList();
        if (!cut.Parts.Zip(places).All(pair => Sees(pair.First, pair.Second, Grate.Point)))
        {
            return null;
        }

        var pans = cut.Parts.Zip(places, (part, place) => new Pan(part, place, Grate.Point)).ToList();
        var (least, most) = (pans.Max(pan => pan.RimWindow(limits).Least), pans.Min(pan => pan.RimWindow(limits).Most));
        return least <= most ? new(cut, places, least, pans.Max(pan => least / pan.Runs.Min())) : null;
    }

    private static IEnumerable<WayOut?> Unseen(Outline outline, PlanPoint drain, FallLimits limits)
    {
        if (!outline.Contains(drain) || outline.IsSeenWholeFrom(drain))
        {
            yield break;
        }

        yield return SplitFloor.Of(outline, drain, limits);
        var ways = ShortestWays.To(outline, drain);
        yield return new WayOut.ConstantFall(limits.Least * outline.Walls.Min(wall =>
            ShortestWays.ToWall(outline, wall, drain, ways)), limits.Least * ways.Max());
    }
}
