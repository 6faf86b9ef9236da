namespace WetCheck.Geometry;

/// <summary>The plane for which the squares of the misfits add up to the least. Any text on statistics.</summary>
/// <param name="Middle">Of the points.</param>
/// <param name="Level">Height of the plane there, inches.</param>
/// <param name="Slope">Rise over run, uphill.</param>
public sealed record LeastSquares(PlanPoint Middle, double Level, PlanPoint Slope)
{
    public double At(PlanPoint place) => Level + Slope.Dot(place - Middle);

    /// <param name="weight">Of each point by its index; null: all alike.</param>
    /// <returns>Null where the points lie in one line.</returns>
    public static LeastSquares? Of(IReadOnlyList<LevelPoint> points, Func<int, double>? weight = null)
    {
        double sum = 0, level = 0, xx = 0, xy = 0, yy = 0, xz = 0, yz = 0;
        var middle = default(PlanPoint);
        for (var at = 0; at < points.Count; at++)
        {
            var w = weight?.Invoke(at) ?? 1;
            (sum, middle, level) = (sum + w, middle + (points[at].At * w), level + (points[at].Height * w));
        }

        (middle, level) = (middle * (1 / sum), level / sum);
        for (var at = 0; at < points.Count; at++)
        {
            var (w, from, up) = (weight?.Invoke(at) ?? 1, points[at].At - middle, points[at].Height - level);
            (xx, xy, yy) = (xx + (w * from.X * from.X), xy + (w * from.X * from.Y), yy + (w * from.Y * from.Y));
            (xz, yz) = (xz + (w * from.X * up), yz + (w * from.Y * up));
        }

        var spread = (xx * yy) - (xy * xy);
        return points.Count < 3 || !(spread > 1e-9 * (xx + yy) * (xx + yy)) ? null
            : new LeastSquares(middle, level, new PlanPoint((xz * yy) - (yz * xy), (yz * xx) - (xz * xy)) * (1 / spread));
    }
}
