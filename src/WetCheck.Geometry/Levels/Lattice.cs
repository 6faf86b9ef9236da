namespace WetCheck.Geometry;

/// <summary>Points moved to the nearest ten-thousandth of an inch, so that which side and which circle are answered exactly.</summary>
internal sealed class Lattice
{
    private const double Fine = 10_000;

    private readonly long[] _x;
    private readonly long[] _y;

    public Lattice(IReadOnlyList<PlanPoint> points)
    {
        _x = [.. points.Select(point => (long)Math.Round(point.X * Fine))];
        _y = [.. points.Select(point => (long)Math.Round(point.Y * Fine))];
    }

    /// <summary>By x, where it is the same by y.</summary>
    public int LeftToRight(int one, int other) => _x[one] != _x[other] ? _x[one].CompareTo(_x[other]) : _y[one].CompareTo(_y[other]);

    /// <summary>Over zero where the third lies to the left of the way from the first to the second.</summary>
    public int Turn(int from, int to, int at) =>
        Math.Sign(((_x[to] - _x[from]) * (_y[at] - _y[from])) - ((_y[to] - _y[from]) * (_x[at] - _x[from])));

    /// <summary>A fourth point lies within the circle round three that stand against the clock.</summary>
    public bool IsWithin(int a, int b, int c, int at)
    {
        var (ax, ay, bx, by, cx, cy) = (_x[a] - _x[at], _y[a] - _y[at], _x[b] - _x[at], _y[b] - _y[at], _x[c] - _x[at], _y[c] - _y[at]);
        var (ab, bc, ca) = ((ax * by) - (ay * bx), (bx * cy) - (by * cx), (cx * ay) - (cy * ax));
        var (a2, b2, c2) = ((ax * ax) + (ay * ay), (bx * bx) + (by * by), (cx * cx) + (cy * cy));
        var (first, second, third) = ((double)a2 * bc, (double)b2 * ca, (double)c2 * ab);
        var sum = first + second + third;

        // Three products, each rounded: where the sum is far over that its sign is sure.
        return Math.Abs(sum) > 1e-14 * (Math.Abs(first) + Math.Abs(second) + Math.Abs(third)) ? sum > 0
            : ((Int128)a2 * bc) + ((Int128)b2 * ca) + ((Int128)c2 * ab) > 0;
    }
}
