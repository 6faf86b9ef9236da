namespace WetCheck.Geometry;

/// <summary>
/// The ribs of a floor that is one plane, side by side: from a channel along a wall, square to it, to each corner and
/// to the middle of what lies over against it.
/// </summary>
internal static class PlaneRibs
{
    private const double Hair = 1e-6;

    /// <param name="channel">The wall.</param>
    /// <param name="depth">From the channel's inner edge to the farthest corner.</param>
    /// <param name="rim">Height there.</param>
    public static IReadOnlyList<Rib> Of(Outline outline, int channel, double depth, double rim, TapeMarks tape)
    {
        var wall = outline.Walls[channel];
        var edge = outline.Corners.Max(wall.Distance) - depth;
        var corners = Enumerable.Range(0, outline.Corners.Count).Where(corner => wall.Distance(outline.Corners[corner]) > edge + Hair)
            .Select(corner => (Kind: RibKind.Fold, At: corner, On: outline.Corners[corner]));
        var middles =
            Enumerable.Range(0, outline.Walls.Count)
            .Where(at => wall.Distance(outline.Walls[at].From) > edge + Hair
            && wall.Distance(outline.Walls[at].To) > edge + Hair)
            .Select(at => (Kind: RibKind.Foot, At: at, On: (outline.Walls[at].From + outline.Walls[at].To) * 0.5))
            .Where(one => Math.Abs(outline.Walls[one.At].Along.Dot(wall.Along)) > Hair);

        // Walking along the channel the floor lies on its left, so its far side is passed with the clock: the other way
        // round is against it.
        return [.. corners.Concat(middles).OrderByDescending(one => wall.Foot(one.On)).Select(one => Rib(one.Kind, one.At, one.On))];

        Rib Rib(RibKind kind, int at, PlanPoint on)
        {
            var run = wall.Distance(on) - edge;
            var height = tape.Near(rim * run / depth);
            return new Rib(kind, at, on - (wall.Inward * run), on, height, wall.Inward, tape.Along(run, height));
        }
    }
}
