namespace WetCheck.Geometry;

/// <summary>
/// How water could run to a drain that is not seen from everywhere: the shortest way within the walls bends only at
/// corners that stand in.
/// </summary>
internal static class ShortestWays
{
    /// <returns>For each corner of the outline, inches.</returns>
    public static IReadOnlyList<double> To(Outline outline, PlanPoint drain)
    {
        var count = outline.Corners.Count;
        var far = outline.Corners.Select(corner => Sees(outline, corner, drain) ? (corner - drain)
            .Length : double.PositiveInfinity).ToArray();
        var open = Enumerable.Range(0, count).ToHashSet();
        while (open.Count > 0)
        {
            // The nearest that is left can't be reached in a shorter way.
            var near = open.MinBy(at => far[at]);
            open.Remove(near);
            foreach (var other in open.Where(other => Sees(outline, outline.Corners[near], outline.Corners[other])))
            {
                far[other] = Math.Min(far[other], far[near] + (outline.Corners[near] - outline.Corners[other]).Length);
            }
        }

        return far;
    }

    /// <summary>To the nearest point of a wall.</summary>
    /// <param name="corners">As <see cref="To"/> gives them.</param>
    public static double ToWall(Outline outline, Wall wall, PlanPoint drain, IReadOnlyList<double> corners)
    {
        var foot = wall.From + (wall.Along * wall.Foot(drain));
        return wall.Holds(foot) && Sees(outline, foot, drain)
            ? wall.Distance(drain)
            : outline.Corners.Select((corner, at) => corners[at] + Reach(outline, wall, corner))
                .Append(wall.Distance(drain) == 0 ? 0 : double.PositiveInfinity).Min();
    }

    /// <summary>The straight line between two places leaves the floor nowhere.</summary>
    internal static bool Sees(Outline outline, PlanPoint a, PlanPoint b)
    {
        if ((b - a).Length < 1e-9)
        {
            return true;
        }

        var line = new Wall(a, b);
        var stops = outline.Walls.Where(wall => Math.Abs(line.Along.Cross(wall.Along)) > 1e-12)
            .Select(wall => (wall.From - a).Cross(wall.Along) / line.Along.Cross(wall.Along))
            .Where(far => far > 1e-9 && far < line.Length - 1e-9)
            .Append(0).Append(line.Length).Order().ToList();
        return stops.Zip(stops.Skip(1)).All(pair => outline.Contains(a + (line.Along * ((pair.First + pair.Second) / 2))));
    }

    private static double Reach(Outline outline, Wall wall, PlanPoint corner)
    {
        var foot = wall.From + (wall.Along * Math.Clamp(wall.Foot(corner), 0, wall.Length));
        return Sees(outline, corner, foot) ? (corner - foot).Length : double.PositiveInfinity;
    }
}
