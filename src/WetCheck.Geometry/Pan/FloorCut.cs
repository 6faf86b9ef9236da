namespace WetCheck.Geometry;

/// <summary>A straight line across a floor, from one wall to another, and the two floors it leaves.</summary>
/// <param name="Parts">The one on the left of the line first. The line is the last wall of each.</param>
public sealed record FloorCut(PlanPoint From, PlanPoint To, IReadOnlyList<Outline> Parts)
{
    private const double Hair = 1e-9;

    /// <summary>Straight across the middle of the longer extent; null where the line would meet more than two walls.</summary>
    public static FloorCut? Across(Outline outline)
    {
        var (left, right) = (outline.Corners.Min(corner => corner.X), outline.Corners.Max(corner => corner.X));
        var (front, back) = (outline.Corners.Min(corner => corner.Y), outline.Corners.Max(corner => corner.Y));
        var middle = new PlanPoint((left + right) / 2, (front + back) / 2);
        var way = right - left >= back - front ? new PlanPoint(0, 1) : new PlanPoint(1, 0);
        var hits = Hits(outline, middle, way).ToList();
        return hits.Count == 2 ? Of(outline, hits[0].At, hits[1].At) : null;
    }

    /// <summary>The cuts that go on in the line of a wall from a corner that stands into the room.</summary>
    public static IEnumerable<FloorCut> FromCorner(Outline outline, int corner)
    {
        var from = outline.Corners[corner];
        foreach (var way in new[] { outline.WallAt(corner - 1).Along, outline.WallAt(corner).Along * -1 })
        {
            var hits = Hits(outline, from, way).Where(hit => hit.Far > Hair).OrderBy(hit => hit.Far).ToList();
            if (hits.Count > 0 && Of(outline, from, hits[0].At) is { } cut)
            {
                yield return cut;
            }
        }
    }

    /// <summary>Half way between two drains; null where the line would meet more than two walls.</summary>
    public static FloorCut? Between(Outline outline, PlanPoint first, PlanPoint second)
    {
        var hits = first == second ? [] : Hits(outline, (first + second) * 0.5, (second - first).Turned.Unit).ToList();
        return hits.Count == 2 ? Of(outline, hits[0].At, hits[1].At) : null;
    }

    private static FloorCut? Of(Outline outline, PlanPoint from, PlanPoint to)
    {
        var (left, right) = (Ring(outline, to, from), Ring(outline, from, to));
        return left is null || right is null ? null : new FloorCut(from, to, [left, right]);
    }

    /// <summary>Along the walls from one end to the other, then back on the line.</summary>
    private static Outline? Ring(Outline outline, PlanPoint start, PlanPoint end)
    {
        var first = Enumerable.Range(0, outline.Walls.Count)
            .First(at => outline.Walls[at].Holds(start) && (outline.Walls[at].To - start).Length > Hair);
        List<PlanPoint> ring = [start];
        for (var at = first; ; at++)
        {
            var wall = outline.WallAt(at);
            if (wall.Holds(end) && (at > first || wall.Foot(end) > wall.Foot(start)))
            {
                ring.Add(end);
                break;
            }

            ring.Add(wall.To);
        }

        var corners = ring.Distinct().ToList();
        return corners.Count < 3 || Outline.AreaOf(corners) < Hair ? null : new Outline(corners);
    }

    private static IEnumerable<(double Far, PlanPoint At)> Hits(Outline outline, PlanPoint from, PlanPoint way) => outline.Walls
        .Select(wall => (Turn: way.Cross(wall.Along), Wall: wall))
        .Where(one => Math.Abs(one.Turn) > Hair)
        .Select(one => (Far: (one.Wall.From - from).Cross(one.Wall.Along) / one.Turn, one.Wall))
        .Select(one => (one.Far, At: from + (way * one.Far), one.Wall))
        .Where(one => one.Wall.Holds(one.At))
        .Select(one => (one.Far, one.At))
        .DistinctBy(one => Math.Round(one.Far, 6));
}
