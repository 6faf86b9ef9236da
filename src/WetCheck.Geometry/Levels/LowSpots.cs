namespace WetCheck.Geometry;

/// <summary>Where water stands: it rises in a hollow up to the lowest way out to the drain.</summary>
/// <param name="At">The deepest reading.</param>
/// <param name="Least">Depth that is there whatever the half marks hide; zero or less: not certain.</param>
/// <param name="Area">Of the water's face between the readings, square inches.</param>
/// <param name="Volume">Cubic inches.</param>
public sealed record LowSpot(PlanPoint At, double Depth, double Least, double Most, double Area, double Volume)
{
    public bool IsCertain => Least > 1e-9;
}

/// <summary>
/// Finds low spots by flooding from the drain: the lowest point that water has reached is always next (priority flood;
/// any text on terrain).
/// </summary>
public static class LowSpots
{
    /// <param name="drains">Readings at the drain.</param>
    /// <returns>The deepest first.</returns>
    public static IReadOnlyList<LowSpot> Of(LevelSurface surface, IEnumerable<int> drains)
    {
        var points = surface.Points;
        var fill = Fill(surface, drains);
        var wet = Enumerable.Range(0, points.Count)
            .Where(at => !double.IsPositiveInfinity(fill[at]) && fill[at] > points[at].Height + 1e-12);
        return [.. surface.Groups(wet, (one, other) => fill[one] == fill[other])
            .Select(pond => Spot(surface, pond, fill[pond[0]])).OrderByDescending(spot => spot.Depth)];
    }

    /// <summary>How high water stands over each reading when all that can has run off.</summary>
    private static double[] Fill(LevelSurface surface, IEnumerable<int> drains)
    {
        var fill = new double[surface.Points.Count];
        Array.Fill(fill, double.PositiveInfinity);
        var reached = new PriorityQueue<int, double>();
        foreach (var drain in drains)
        {
            fill[drain] = surface.Points[drain].Height;
            reached.Enqueue(drain, fill[drain]);
        }

        while (reached.TryDequeue(out var at, out var level))
        {
            foreach (var next in surface.Beside(at).Where(next => double.IsPositiveInfinity(fill[next])))
            {
                fill[next] = Math.Max(level, surface.Points[next].Height);
                reached.Enqueue(next, fill[next]);
            }
        }

        return fill;
    }

    private static LowSpot Spot(LevelSurface surface, IReadOnlyList<int> pond, double level)
    {
        var points = surface.Points;
        var (deepest, wet) = (pond.MinBy(at => points[at].Height), pond.ToHashSet());
        var (depth, area, volume) = (level - points[deepest].Height, 0.0, 0.0);
        foreach (var triangle in surface.Triangles.Where(one => wet.Contains(one.A) || wet.Contains(one.B) || wet.Contains(one.C)))
        {
            // Past the way out the floor falls again; that water is not of this spot.
            double Under(int at) => wet.Contains(at) ? level - points[at].Height : Math.Min(0, level - points[at].Height);
            var face = Clipped([(points[triangle.A].At, Under(triangle.A)), (points[triangle.B].At, Under(triangle.B)),
                (points[triangle.C].At, Under(triangle.C))]);
            for (var at = 1; at + 1 < face.Count; at++)
            {
                var part = (face[at].At - face[0].At).Cross(face[at + 1].At - face[0].At) / 2;
                (area, volume) = (area + part, volume + (part * (face[0].Depth + face[at].Depth + face[at + 1].Depth) / 3));
            }
        }

        var half = points[deepest].Half;
        return new LowSpot(points[deepest].At, depth, depth - (2 * half), depth + (2 * half), area, volume);
    }

    /// <summary>The part of a triangle that lies under water.</summary>
    private static List<(PlanPoint At, double Depth)> Clipped(IReadOnlyList<(PlanPoint At, double Depth)> triangle)
    {
        var kept = new List<(PlanPoint, double)>();
        for (var at = 0; at < triangle.Count; at++)
        {
            var (here, next) = (triangle[at], triangle[(at + 1) % triangle.Count]);
            if (here.Depth >= 0)
            {
                kept.Add(here);
            }

            if (here.Depth * next.Depth < 0)
            {
                kept.Add((here.At + ((next.At - here.At) * (here.Depth / (here.Depth - next.Depth))), 0));
            }
        }

        return kept;
    }
}
