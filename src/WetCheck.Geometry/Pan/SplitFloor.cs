namespace WetCheck.Geometry;

/// <summary>
/// A floor of which the drain sees only a part. The rest falls to a low point on the line between the parts; that point
/// is a low place in the
/// rim of the near part, with a plane on each side of it.
/// </summary>
internal static class SplitFloor
{
    private const int Places = 400;

    /// <returns>The one with the lowest rim; null where none keeps within the limits.</returns>
    public static WayOut.Split? Of(Outline outline, PlanPoint drain, FallLimits limits) => Enumerable.Range(0, outline.Corners.Count)
        .Where(outline.IsInsideOut)
        .SelectMany(corner => FloorCut.FromCorner(outline, corner))
        .SelectMany(cut => Enumerable.Range(1, Places - 1)
            .Select(at => Of(cut, cut.From + ((cut.To - cut.From) * ((double)at / Places)), drain, limits)))
        .OfType<WayOut.Split>()
        .MinBy(way => way.Rim);

    private static WayOut.Split? Of(FloorCut cut, PlanPoint low, PlanPoint drain, FallLimits limits)
    {
        var near = cut.Parts.FirstOrDefault(part => part.IsSeenWholeFrom(drain));
        if (near is null)
        {
            return null;
        }

        var far = cut.Parts.First(part => part != near);
        var (farWalls, nearWalls) = (Apart(far, cut), Apart(near, cut));

        // A wall that goes on in the line would have no plane to the low point.
        var onLine = far.Walls.Where(wall => OnLine(cut, wall.From) && OnLine(cut, wall.To)).Sum(wall => wall.Length);
        if (onLine > (cut.To - cut.From).Length + 1e-9 || farWalls.Any(wall => wall.Distance(low) <= 1e-9))
        {
            return null;
        }

        var height = limits.Least * (low - drain).Length;
        double Least(Outline part, List<Wall> walls, PlanPoint to) => limits.Least * (limits.Measure == FallMeasure.Valley
            ? part.Corners.Max(corner => (corner - to).Length)
            : walls.Max(wall => wall.Distance(to)));
        var rim = Math.Max(height + Least(far, farWalls, low), Least(near, nearWalls, drain));
        var most = Math.Min(height + (limits.Most * farWalls.Min(wall => wall.Distance(low))),
            limits.Most * nearWalls.Min(wall => wall.Distance(drain)));
        return rim <= most && Sides(cut, low, height, drain, rim).All(side => side.Slope.Length <= limits.Most)
            ? new(cut, low, height, rim) : null;
    }

    /// <summary>The two planes from the line's ends and the low point to the drain.</summary>
    private static IEnumerable<Facet> Sides(FloorCut cut, PlanPoint low, double height, PlanPoint drain, double rim) =>
        new[] { cut.From, cut.To }.Select(end => new Facet(null, [drain, end, low], [0, rim, height]));

    private static List<Wall> Apart(Outline part, FloorCut cut) =>
        [.. part.Walls.Where(wall => !(OnLine(cut, wall.From) && OnLine(cut, wall.To)))];

    private static bool OnLine(FloorCut cut, PlanPoint point) => Math.Abs((cut.To - cut.From).Unit.Cross(point - cut.From)) < 1e-9;
}
