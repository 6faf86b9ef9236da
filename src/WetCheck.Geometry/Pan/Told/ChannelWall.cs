namespace WetCheck.Geometry;

/// <summary>A channel that lies along a wall from end to end, so that the floor is one plane that falls to it.</summary>
internal static class ChannelWall
{
    /// <summary>A gap at each end that tile and setting bed close.</summary>
    private const double Gap = 1;

    /// <returns>The wall, and how far the floor reaches from the channel's inner edge; null where it does not lie so.</returns>
    public static (int Wall, double Depth)? Of(Outline outline, PlanPoint drain, Grate grate)
    {
        for (var at = 0; at < outline.Walls.Count; at++)
        {
            var wall = outline.Walls[at];
            var (along, depth) = (grate.Reach(wall.Along) + grate.Reach(wall.Along * -1), outline.Corners.Max(wall.Distance));
            if (Pan.Run(wall, drain, grate) <= Gap && along >= wall.Length - (2 * Gap) && outline.Corners.All(corner => wall.Distance(corner) > -1e-9))
            {
                return (at, depth - wall.Distance(drain) - grate.Reach(wall.Inward));
            }
        }

        return null;
    }
}
