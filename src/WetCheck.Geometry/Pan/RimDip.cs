namespace WetCheck.Geometry;

/// <summary>
/// A rim that is not level, where no level one keeps within the limits: lower along a near wall at the foot of the
/// drain, so that the wall is not
/// too steep, and higher at the corners, so that the folds are not too flat. One break in each wall.
/// </summary>
/// <param name="Corners">Height over the grate at each corner of the outline, inches.</param>
/// <param name="Breaks">Along each wall from its start, and the height there.</param>
public sealed record RimDip(IReadOnlyList<double> Corners, IReadOnlyList<(double Along, double Height)> Breaks)
{
    public double Highest => Math.Max(Corners.Max(), Breaks.Max(point => point.Height));

    public double Lowest => Math.Min(Corners.Min(), Breaks.Min(point => point.Height));

    /// <summary>How far the rim is out of level.</summary>
    public double Dip => Highest - Lowest;

    /// <returns>The least dip that keeps within the limits; null where none does, or where a wall has no foot of the drain on it.</returns>
    public static RimDip? Of(Pan pan, FallLimits limits)
    {
        if (pan.Outline.Walls.Any(wall => wall.Foot(pan.Drain) <= 0 || wall.Foot(pan.Drain) >= wall.Length))
        {
            return null;
        }

        var most = limits.Least * pan.Longest(limits.Measure);
        if (At(pan, limits, most) is { } level && level.Dip < 1e-12)
        {
            return level;
        }

        // The lower the rim may go, the easier; so the highest lowest point is searched.
        return At(pan, limits, 0) is null ? null : At(pan, limits, Search.Last(lowest => At(pan, limits, lowest) is not null, 0, most));
    }

    /// <summary>The rim with no point below this one; corners and breaks as low as the limits let them be.</summary>
    private static RimDip? At(Pan pan, FallLimits limits, double lowest)
    {
        double[] corners =
            [.. pan.Folds.Select(fold => limits.Measure == FallMeasure.Valley ? Math.Max(lowest, limits.Least * fold)
            : lowest)];
        var breaks = new (double, double)[corners.Length];
        for (var wall = 0; wall < corners.Length; wall++)
        {
            var run = pan.Runs[wall];
            var steepest = limits.Most * run;
            var (before, after) = Sides(pan, wall);
            var (fromLow, fromHigh) = Within(corners[wall], before, run, limits.Most);
            var (toLow, toHigh) = Within(corners[(wall + 1) % corners.Length], after, run, limits.Most);
            var low = Math.Max(Math.Max(fromLow, toLow), Math.Max(lowest, limits.Least * run));
            if (low > Math.Min(Math.Min(fromHigh, toHigh), steepest) + 1e-13)
            {
                return null;
            }

            breaks[wall] = (pan.Outline.Walls[wall].Foot(pan.Drain), low);
        }

        return new RimDip(corners, breaks);
    }

    /// <summary>From each end of the wall to the foot of the grate's corner that its fold runs to.</summary>
    private static (double Before, double After) Sides(Pan pan, int wall)
    {
        var (line, ends) = (pan.Outline.Walls[wall], pan.Outline.Corners.Count);
        var first = Pan.FoldEnds(pan.Outline, wall, pan.Grate).Last();
        var last = Pan.FoldEnds(pan.Outline, (wall + 1) % ends, pan.Grate).First();
        return (line.Foot(pan.Drain + first), line.Length - line.Foot(pan.Drain + last));
    }

    /// <summary>Heights at the foot for which the triangle of foot, corner and grate is no steeper than it may be.</summary>
    /// <remarks>(h/run)² + ((corner − h)/side)² ≤ most².</remarks>
    private static (double Low, double High) Within(double corner, double side, double run, double most)
    {
        var (p, q) = (1 / (run * run), 1 / (side * side));
        var (a, b, c) = (p + q, -corner * q, (corner * corner * q) - (most * most));
        var root = (b * b) - (a * c);
        return root < 0 ? (double.PositiveInfinity, double.NegativeInfinity) : ((-b - Math.Sqrt(root)) / a, (-b + Math.Sqrt(root)) / a);
    }
}
