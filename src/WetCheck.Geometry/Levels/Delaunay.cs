namespace WetCheck.Geometry;

/// <summary>
/// Delaunay triangles of points: no point lies within the circle round a triangle. Points come from left to right, each is joined to the
/// edges it sees, and edges are flipped until all is well (Lawson; any text on computational geometry). Predicates are exact.
/// </summary>
internal sealed class Delaunay
{
    private readonly Lattice _at;
    private readonly List<int> _corners = [];
    private readonly List<int> _twins = [];
    private readonly int[] _next;
    private readonly int[] _before;
    private readonly int[] _edge;
    private readonly Stack<int> _doubted = new();

    /// <param name="points">No two at one place.</param>
    public Delaunay(IReadOnlyList<PlanPoint> points)
    {
        _at = new Lattice(points);
        (_next, _before, _edge) = (new int[points.Count], new int[points.Count], new int[points.Count]);
        int[] order = [.. Enumerable.Range(0, points.Count)];
        Array.Sort(order, _at.LeftToRight);
        var first = 2;
        while (first < order.Length && _at.Turn(order[0], order[1], order[first]) == 0)
        {
            first++;
        }

        if (first < order.Length)
        {
            Start(order, first);
            for (var at = first + 1; at < order.Length; at++)
            {
                Join(order[at - 1], order[at]);
            }
        }
    }

    /// <summary>Three indices for each triangle, against the clock. None where all points lie in one line.</summary>
    public IReadOnlyList<int> Corners => _corners;

    /// <summary>A fan from the first point off the line to those on it.</summary>
    private void Start(int[] order, int apex)
    {
        var point = order[apex];
        var isLeft = _at.Turn(order[0], order[1], point) > 0;
        var line = isLeft ? order[..apex] : order[..apex].Reverse().ToArray();
        var inner = -1;
        for (var at = 0; at + 1 < line.Length; at++)
        {
            // Three edges: along the line, up to the point, back down.
            var edge = Add(line[at], line[at + 1], point, -1, -1, inner);
            (_edge[line[at]], inner) = (edge, edge + 1);
            Chain(line[at], line[at + 1]);
        }

        Chain(line[^1], point);
        Chain(point, line[0]);
        (_edge[line[^1]], _edge[point]) = (inner, 2);
    }

    /// <summary>The last point is the rightmost, so the new one sees it; from there the edges that it sees lie on both sides.</summary>
    private void Join(int last, int point)
    {
        var (up, down, upper, lower) = (last, last, -1, -1);
        while (_at.Turn(up, _next[up], point) < 0)
        {
            var edge = Add(up, point, _next[up], upper, -1, _edge[up]);
            _doubted.Push(edge + 2);
            (up, upper) = (_next[up], edge + 1);
            lower = lower < 0 ? edge : lower;
        }

        var (open, closing) = (upper, lower);
        while (_at.Turn(_before[down], down, point) < 0)
        {
            var before = _before[down];
            var edge = Add(before, point, down, -1, closing, _edge[before]);
            _doubted.Push(edge + 2);
            open = open < 0 ? edge + 1 : open;
            (down, closing) = (before, edge);
        }

        Chain(down, point);
        Chain(point, up);
        (_edge[down], _edge[point]) = (closing, open);
        Flip();
    }

    private void Flip()
    {
        while (_doubted.TryPop(out var edge))
        {
            var twin = _twins[edge];
            if (twin < 0)
            {
                continue;
            }

            var (back, across, away) = (Back(edge), Back(twin), Back(Back(twin)));
            var (near, far) = (_corners[back], _corners[across]);
            if (!_at.IsWithin(_corners[edge], _corners[twin], near, far))
            {
                continue;
            }

            (_corners[edge], _corners[twin]) = (far, near);
            Link(edge, _twins[across], far);
            Link(twin, _twins[back], near);
            Link(back, across, near);
            _doubted.Push(edge);
            _doubted.Push(away);
        }
    }

    private int Add(int a, int b, int c, int twinA, int twinB, int twinC)
    {
        var edge = _corners.Count;
        _corners.AddRange([a, b, c]);
        _twins.AddRange([-1, -1, -1]);
        Link(edge, twinA, a);
        Link(edge + 1, twinB, b);
        Link(edge + 2, twinC, c);
        return edge;
    }

    private void Link(int edge, int twin, int from)
    {
        _twins[edge] = twin;
        if (twin < 0)
        {
            _edge[from] = edge;
        }
        else
        {
            _twins[twin] = edge;
        }
    }

    private void Chain(int from, int to) => (_next[from], _before[to]) = (to, from);

    private static int Back(int edge) => edge % 3 == 0 ? edge + 2 : edge - 1;
}
