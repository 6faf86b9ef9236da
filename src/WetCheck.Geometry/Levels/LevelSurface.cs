namespace WetCheck.Geometry;

/// <summary>
/// Triangles between level readings, those that reach over a wall left out. Readings on one line have no triangle: each
/// is beside the next.
/// </summary>
public sealed class LevelSurface
{
    private readonly List<(int A, int B, int C)> _triangles = [];
    private readonly SortedSet<int>[] _beside;

    /// <param name="points">No two at one place.</param>
    public LevelSurface(IReadOnlyList<LevelPoint> points, Outline outline)
    {
        Points = points;
        _beside = [.. points.Select(_ => new SortedSet<int>())];
        var corners = new Delaunay([.. points.Select(point => point.At)]).Corners;
        for (var at = 0; at < corners.Count; at += 3)
        {
            var (a, b, c) = (corners[at], corners[at + 1], corners[at + 2]);
            if (outline.IsConvex || IsInside(outline, a, b, c))
            {
                _triangles.Add((a, b, c));
                Join(a, b);
                Join(b, c);
                Join(c, a);
            }
        }

        if (corners.Count == 0)
        {
            var run = Enumerable.Range(0, points.Count).OrderBy(at => points[at].At.X).ThenBy(at => points[at].At.Y).ToList();
            foreach (var (one, next) in run.Zip(run.Skip(1)))
            {
                Join(one, next);
            }
        }
    }

    public IReadOnlyList<LevelPoint> Points { get; }

    /// <summary>Against the clock.</summary>
    public IReadOnlyList<(int A, int B, int C)> Triangles => _triangles;

    /// <summary>Points that share an edge with this one.</summary>
    public IEnumerable<int> Beside(int point) => _beside[point];

    public double Area((int A, int B, int C) triangle) =>
        (Points[triangle.B].At - Points[triangle.A].At).Cross(Points[triangle.C].At - Points[triangle.A].At) / 2;

    /// <summary>
    /// The distance of readings on a square grid whose triangles are as long as these. A tenth of the area may have
    /// longer ones.
    /// </summary>
    public double Spacing
    {
        get
        {
            var (reached, whole) = (0.0, _triangles.Sum(Area));
            foreach (var (area, longest) in _triangles.Select(one => (Area(one), Longest(one))).OrderBy(one => one.Item2))
            {
                reached += area;
                if (reached >= 0.9 * whole)
                {
                    return longest / Math.Sqrt(2);
                }
            }

            return double.PositiveInfinity;
        }
    }

    /// <summary>Groups of points that hang together by edges between them, the largest first.</summary>
    /// <param name="alike">Two neighbours belong to one group.</param>
    public IEnumerable<IReadOnlyList<int>> Groups(IEnumerable<int> of, Func<int, int, bool> alike)
    {
        var open = of.ToHashSet();
        var groups = new List<List<int>>();
        while (open.Count > 0)
        {
            var group = new List<int> { open.Min() };
            open.Remove(group[0]);
            for (var at = 0; at < group.Count; at++)
            {
                foreach (var next in _beside[group[at]].Where(next => open.Contains(next) && alike(group[at], next)))
                {
                    open.Remove(next);
                    group.Add(next);
                }
            }

            groups.Add(group);
        }

        return groups.OrderByDescending(group => group.Count);
    }

    private double Longest((int A, int B, int C) one)
    {
        var (a, b, c) = (Points[one.A].At, Points[one.B].At, Points[one.C].At);
        return Math.Max((a - b).Length, Math.Max((b - c).Length, (c - a).Length));
    }

    private void Join(int one, int other)
    {
        _beside[one].Add(other);
        _beside[other].Add(one);
    }

    /// <summary>Middle and edges lie in the floor.</summary>
    private bool IsInside(Outline outline, int a, int b, int c)
    {
        var (first, second, third) = (Points[a].At, Points[b].At, Points[c].At);
        return new[] { (first + second + third) * (1 / 3d), (first + second) * 0.5, (second + third) * 0.5,
            (third + first) * 0.5 }.All(outline.Contains);
    }
}
