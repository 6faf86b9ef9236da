namespace WetCheck.Geometry;

/// <summary>Where water that rises over the drain first gets to the edge of a floor as it was read. Heights as the readings'.</summary>
internal static class FirstOut
{
    /// <summary>A rod does not stand in the corner itself.</summary>
    private const double AtTheEdge = 2;

    /// <returns>Null where no reading stands at an edge.</returns>
    public static (PlanPoint At, double Level)? Of(LevelSurface surface, Outline outline, PlanPoint drain)
    {
        List<Facet> floor = [.. surface.Triangles.Select(one => new[] { one.A, one.B, one.C })
            .Select(corners =>
                new Facet(null, [.. corners.Select(corner => surface.Points[corner].At)],
                [.. corners.Select(corner => surface.Points[corner].Height)]))];
        List<(PlanPoint At, double Height)> edge =
            [.. surface.Triangles.SelectMany(one => new[] { one.A, one.B, one.C }).Distinct()
            .Select(corner => surface.Points[corner])
            .Where(point =>
                outline.Walls.Any(wall => wall.Distance(point.At) <= AtTheEdge && wall.Foot(point.At) >= -AtTheEdge
                && wall.Foot(point.At) <= wall.Length + AtTheEdge))
            .Select(point => (point.At, point.Height))];
        return edge.Count == 0 ? null : LowestWay.Of(floor, edge, drain)[0] is var (exit, level) ? (edge[exit].At, level) : null;
    }
}
