namespace WetCheck.Geometry;

/// <summary>The edge of a floor: a simple polygon against the clock, without three corners in one line. Inches.</summary>
public sealed class Outline
{
    private const double Hair = 1e-9;

    /// <param name="corners">Either way round; corners that lie in one line with their neighbours are left out.</param>
    /// <exception cref="ArgumentException">It encloses nothing, or crosses itself.</exception>
    public Outline(IEnumerable<PlanPoint> corners)
    {
        var given = corners.ToList();
        if (AreaOf(given) < 0)
        {
            given.Reverse();
        }

        Corners = [.. given.Where((corner, at) => Math.Abs((corner - Around(given, at - 1)).Cross(Around(given, at + 1) - corner)) > Hair)];
        if (Corners.Count < 3 || AreaOf(Corners) < Hair)
        {
            throw new ArgumentException("The corners enclose no floor.", nameof(corners));
        }

        Walls = [.. Corners.Select((corner, at) => new Wall(corner, CornerAt(at + 1)))];
        if (Walls.Where((wall, at) => Walls.Skip(at + 2).Take(at == 0 ? Walls.Count - 3 : Walls.Count).Any(wall.Meets)).Any())
        {
            throw new ArgumentException("The walls cross each other.", nameof(corners));
        }
    }

    public static Outline Rectangle(double width, double depth) => new([new(0, 0), new(width, 0), new(width, depth), new(0, depth)]);

    public IReadOnlyList<PlanPoint> Corners { get; }

    /// <summary>Wall <c>i</c> runs from corner <c>i</c> to the next.</summary>
    public IReadOnlyList<Wall> Walls { get; }

    public double Area => AreaOf(Corners);

    /// <param name="at">Counted round and round.</param>
    public PlanPoint CornerAt(int at) => Around(Corners, at);

    public Wall WallAt(int at) => Around(Walls, at);

    /// <summary>The floor reaches more than half round this corner: it stands into the room.</summary>
    public bool IsInsideOut(int corner) => WallAt(corner - 1).Along.Cross(WallAt(corner).Along) < 0;

    public bool IsConvex => !Enumerable.Range(0, Corners.Count).Any(IsInsideOut);

    /// <summary>From here every wall is seen from its inner side, so every corner is in sight.</summary>
    public bool IsSeenWholeFrom(PlanPoint point) => Walls.All(wall => wall.Distance(point) > Hair);

    /// <summary>Inside or on the edge.</summary>
    public bool Contains(PlanPoint point)
    {
        if (Walls.Any(wall => wall.Holds(point)))
        {
            return true;
        }

        var inside = false;
        foreach (var wall in Walls)
        {
            var (a, b) = (wall.From, wall.To);
            if ((a.Y > point.Y) != (b.Y > point.Y) && point.X < a.X + ((point.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X)))
            {
                inside = !inside;
            }
        }

        return inside;
    }

    /// <summary>Over zero against the clock.</summary>
    public static double AreaOf(IReadOnlyList<PlanPoint> corners)
    {
        var twice = 0.0;
        for (var i = 0; i < corners.Count; i++)
        {
            twice += corners[i].Cross(Around(corners, i + 1));
        }

        return twice / 2;
    }

    private static T Around<T>(IReadOnlyList<T> ring, int at) => ring[((at % ring.Count) + ring.Count) % ring.Count];
}
