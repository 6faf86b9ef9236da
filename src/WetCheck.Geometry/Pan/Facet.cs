namespace WetCheck.Geometry;

/// <summary>One plane of a floor.</summary>
/// <param name="Wall">The wall it falls from; null where it falls from a corner to an edge of the grate.</param>
/// <param name="Corners">Against the clock, inches.</param>
/// <param name="Heights">Over the grate at each of them, inches.</param>
public sealed record Facet(int? Wall, IReadOnlyList<PlanPoint> Corners, IReadOnlyList<double> Heights)
{
    /// <summary>Rise over run, uphill.</summary>
    public PlanPoint Slope
    {
        get
        {
            // The widest triangle of its corners is the least upset by rounding.
            var (a, b, c) = Triangles().MaxBy(t => Math.Abs((Corners[t.B] - Corners[t.A]).Cross(Corners[t.C] - Corners[t.A])));
            var (u, v) = (Corners[b] - Corners[a], Corners[c] - Corners[a]);
            var (riseU, riseV) = (Heights[b] - Heights[a], Heights[c] - Heights[a]);
            return new PlanPoint((riseU * v.Y) - (riseV * u.Y), (riseV * u.X) - (riseU * v.X)) * (1 / u.Cross(v));
        }
    }

    public double Area => Outline.AreaOf(Corners);

    /// <summary>
    /// Of what lies between the plane and the level of the grate, cubic inches: exact, since each triangle is a prism
    /// cut by a plane.
    /// </summary>
    public double Volume => Triangles().Sum(t =>
        (Corners[t.B] - Corners[t.A]).Cross(Corners[t.C] - Corners[t.A]) / 2 * ((Heights[t.A] + Heights[t.B] + Heights[t.C]) / 3));

    private IEnumerable<(int A, int B, int C)> Triangles() => Enumerable.Range(1, Corners.Count - 2).Select(at => (0, at, at + 1));
}
