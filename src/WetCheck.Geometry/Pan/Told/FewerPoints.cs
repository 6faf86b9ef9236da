using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>As few points of a closed line as keep it within a hair's breadth, for showing.</summary>
internal static class FewerPoints
{
    private const double Within = 0.005;

    public static IReadOnlyList<Spot> Of(IReadOnlyList<PlanPoint> ring)
    {
        if (ring.Count < 4)
        {
            return [.. ring.Select(point => new Spot(point.X, point.Y))];
        }

        // Cut where it lies farthest apart, so that neither half is a point.
        var far = Enumerable.Range(0, ring.Count).MaxBy(at => (ring[at] - ring[0]).Length);
        var kept = new SortedSet<int> { 0, far };
        Keep(ring, 0, far, kept);
        Keep([.. ring, ring[0]], far, ring.Count, kept);
        kept.Remove(ring.Count);
        return [.. kept.Select(at => new Spot(ring[at].X, ring[at].Y))];
    }

    private static void Keep(IReadOnlyList<PlanPoint> line, int from, int to, SortedSet<int> kept)
    {
        if (to - from < 2)
        {
            return;
        }

        var way = line[to] - line[from];
        var most = Enumerable.Range(from + 1, to - from - 1).MaxBy(Off);
        if (Off(most) > Within)
        {
            kept.Add(most);
            Keep(line, from, most, kept);
            Keep(line, most, to, kept);
        }

        double Off(int at) => way.Length < 1e-12 ? (line[at] - line[from]).Length : Math.Abs(way.Unit.Cross(line[at] - line[from]));
    }
}
