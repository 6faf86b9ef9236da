namespace WetCheck.Geometry;

/// <summary>
/// What the floor falls to: the middle of a drain, or the level edge of its grate. Convex, set out from the drain's
/// middle, inches.
/// </summary>
/// <param name="Corners">Against the clock, from the middle.</param>
/// <param name="Radius">Of a round one; its only corner is then the middle.</param>
public sealed record Grate(IReadOnlyList<PlanPoint> Corners, double Radius)
{
    private const double Hair = 1e-9;

    /// <summary>The drain taken as a point.</summary>
    public static Grate Point { get; } = new([default], 0);

    /// <param name="half">Half its side.</param>
    /// <param name="turned">Against the clock, in degrees.</param>
    public static Grate Square(double half, double turned = 0) =>
        Turned([new(-half, -half), new(half, -half), new(half, half), new(-half, half)], turned);

    public static Grate Round(double radius) => new([default], radius);

    /// <summary>A channel.</summary>
    /// <param name="turned">Of its length, against the clock from the entry wall, in degrees.</param>
    public static Grate Channel(double length, double width, double turned = 0) =>
        Turned([new(-length / 2, -width / 2), new(length / 2, -width / 2), new(length / 2, width / 2),
            new(-length / 2, width / 2)], turned);

    public double Area => Corners.Count > 2 ? Outline.AreaOf(Corners) : Math.PI * Radius * Radius;

    /// <summary>How far it reaches this way from its middle.</summary>
    /// <param name="way">Of length 1.</param>
    public double Reach(PlanPoint way) => Corners.Max(corner => corner.Dot(way)) + Radius;

    /// <summary>The corners that reach farthest: two where an edge is square to the way.</summary>
    public IReadOnlyList<int> Farthest(PlanPoint way)
    {
        var most = Corners.Max(corner => corner.Dot(way));
        var far = Enumerable.Range(0, Corners.Count).Where(at => Corners[at].Dot(way) > most - Hair).ToList();
        return far.Count == 2 && far[1] - far[0] > 1 ? [far[1], far[0]] : far;
    }

    /// <summary>
    /// Corners met while turning from one way to the next: the last that the first reaches with, to the first of the
    /// second.
    /// </summary>
    /// <param name="back">Clockwise, at a corner of the floor that stands into the room.</param>
    public IReadOnlyList<int> Between(PlanPoint from, PlanPoint to, bool back)
    {
        var step = back ? Corners.Count - 1 : 1;
        var (at, end) = back ? (Farthest(from)[0], Farthest(to)[^1]) : (Farthest(from)[^1], Farthest(to)[0]);
        var met = new List<int> { at };
        while (at != end)
        {
            met.Add(at = (at + step) % Corners.Count);
        }

        return met;
    }

    private static Grate Turned(IEnumerable<PlanPoint> corners, double degrees)
    {
        // Quarter turns are exact: an edge along a wall stays along it.
        (double sin, double cos) = ((((degrees / 90) % 4) + 4) % 4) switch
        {
            0 => (0d, 1d),
            1 => (1, 0),
            2 => (0, -1),
            3 => (-1, 0),
            _ => Math.SinCos(degrees * Math.PI / 180),
        };
        return new([.. corners.Select(corner =>
            new PlanPoint((cos * corner.X) - (sin * corner.Y), (sin * corner.X) + (cos * corner.Y)))], 0);
    }
}
