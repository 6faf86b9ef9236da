namespace WetCheck.Geometry;

/// <summary>
/// A channel that lies along a wall, so that the floor is one plane that falls to it. Where it is shorter than the
/// wall, the corners beside it
/// stand a little higher, and a triangle falls from each to the channel's end.
/// </summary>
/// <param name="Depth">From the channel's inner edge to the far rim.</param>
/// <param name="Ends">Corners beside it, and how far along the wall they are from its end; none where it reaches them.</param>
internal sealed record ChannelWall(int Wall, double Depth, IReadOnlyList<(int Corner, double Far)> Ends)
{
    /// <summary>A gap that tile and setting bed close.</summary>
    private const double Gap = 1;

    /// <returns>Null where no wall has it beside it, or a shorter one's corners are not square.</returns>
    public static ChannelWall? Of(Outline outline, PlanPoint drain, Grate grate) =>
        Enumerable.Range(0, outline.Walls.Count).Select(wall => At(outline, wall, drain, grate)).FirstOrDefault(found => found is not null);

    /// <summary>
    /// Heights of the far rim within the limits. Along the folds the way from a far corner to the channel's end is the
    /// longest.
    /// </summary>
    public (double Least, double Most) Window(FallLimits fall) => Ends.Count == 0 ? (fall.Least * Depth, fall.Most * Depth)
        : (fall.Least * (fall.Measure == FallMeasure.Square ? Depth : Ends.Max(end => Math.Sqrt((end.Far * end.Far) + (Depth * Depth)))),
            Ends.Min(end =>
                Math.Min(fall.Most * Depth,
                (fall.Least * end.Far) + (Depth * Math.Sqrt((fall.Most * fall.Most) - (fall.Least * fall.Least))))));

    /// <summary>Of the triangle beside the channel, with the far rim and the corner so high.</summary>
    public double SlopeBeside(double far, double rim, double corner) =>
        Math.Sqrt(Math.Pow(corner / far, 2) + Math.Pow((rim - corner) / Depth, 2));

    private static ChannelWall? At(Outline outline, int at, PlanPoint drain, Grate grate)
    {
        var wall = outline.Walls[at];
        var (behind, ahead) = (wall.Foot(drain) - grate.Reach(wall.Along * -1), wall.Length - wall.Foot(drain) - grate.Reach(wall.Along));
        var isBeside =
            Pan.Run(wall, drain, grate) <= Gap && grate.Reach(wall.Along) > grate.Reach(wall.Inward)
            && outline.Corners.All(corner => wall.Distance(corner) > -1e-9);
        (int Corner, double Far)[] all = [(at, behind), ((at + 1) % outline.Corners.Count, ahead)];
        List<(int Corner, double Far)> ends = [.. all.Where(end => end.Far > Gap)];
        return isBeside && (ends.Count == 0 || IsSquare(outline, at)) && ends.TrueForAll(end => end.Far < wall.Length)
            ? new ChannelWall(at, outline.Corners.Max(wall.Distance) - wall.Distance(drain) - grate.Reach(wall.Inward), ends)
            : null;
    }

    /// <summary>A rectangle: then the corners beside the channel and the far ones are one above the other.</summary>
    private static bool IsSquare(Outline outline, int at) =>
        outline.Walls.Count == 4 && Math.Abs(outline.WallAt(at).Along.Dot(outline.WallAt(at + 1).Along)) < 1e-9
            && Math.Abs(outline.WallAt(at).Along.Dot(outline.WallAt(at - 1).Along)) < 1e-9;
}
