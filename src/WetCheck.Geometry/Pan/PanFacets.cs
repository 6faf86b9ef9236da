namespace WetCheck.Geometry;

/// <summary>The planes of a floor with a level rim, in the order of its walls; they cover it up to the grate without a gap.</summary>
internal static class PanFacets
{
    /// <param name="rim">Height over the grate, inches.</param>
    public static IEnumerable<Facet> Of(Pan pan, double rim)
    {
        var count = pan.Outline.Walls.Count;
        for (var at = 0; at < count; at++)
        {
            yield return OfWall(pan, at, rim);

            // Where the grate's edge turns between two walls it has planes of its own, up to the corner.
            var corner = (at + 1) % count;
            if (!pan.Outline.IsInsideOut(corner))
            {
                var ends = Pan.FoldEnds(pan.Outline, corner, pan.Grate).Select(end => pan.Drain + end).ToList();
                for (var end = 0; end + 1 < ends.Count; end++)
                {
                    yield return new Facet(null, [pan.Outline.Corners[corner], ends[end + 1], ends[end]], [rim, 0, 0]);
                }
            }
        }
    }

    private static Facet OfWall(Pan pan, int at, double rim)
    {
        var wall = pan.Outline.Walls[at];
        var foot = pan.Grate.Farthest(wall.Inward * -1)
            .Select(corner => pan.Drain + pan.Grate.Corners[corner] - (wall.Inward * pan.Grate.Radius)).Reverse();
        List<PlanPoint> corners = [wall.From, wall.To, .. foot];
        double Height(PlanPoint point) => rim * (1 - (wall.Distance(point) / pan.Runs[at]));
        foreach (var beside in new[] { (Corner: at, Wall: at - 1), (Corner: at + 1, Wall: at + 1) }
            .Where(side => pan.Outline.IsInsideOut(side.Corner % pan.Outline.Corners.Count)))
        {
            // A ridge: the lower of two planes is the floor.
            var other = pan.Outline.WallAt(beside.Wall);
            var run = Pan.Run(other, pan.Drain, pan.Grate);
            corners = Clip.Keep(corners, point => (rim * (1 - (other.Distance(point) / run))) - Height(point));
        }

        return new Facet(at, corners, [.. corners.Select(Height)]);
    }
}
