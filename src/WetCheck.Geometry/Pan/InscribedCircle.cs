namespace WetCheck.Geometry;

/// <summary>The largest circle that fits a floor: a place farthest from all walls. Inches.</summary>
/// <param name="Radius">Too short by a thousandth at most; in a floor longer than 100 inches, by a hundred-thousandth
/// of its length.</param>
public sealed record InscribedCircle(PlanPoint Middle, double Radius)
{
    /// <summary>
    /// Coarse on purpose: in a rectangle the farthest places are a whole line, cut into squares of this size before the
    /// search ends.
    /// </summary>
    private const double Near = 1e-3;

    /// <summary>Of the longer side, so that a long floor takes no longer.</summary>
    private const double NearOfLength = 1e-5;

    /// <summary>Squares are quartered, the one that may hold the farthest place first, until none may hold a farther one.</summary>
    public static InscribedCircle Of(Outline outline)
    {
        var (left, right) = (outline.Corners.Min(at => at.X), outline.Corners.Max(at => at.X));
        var (front, back) = (outline.Corners.Min(at => at.Y), outline.Corners.Max(at => at.Y));
        var middle = new PlanPoint((left + right) / 2, (front + back) / 2);
        var best = new InscribedCircle(middle, Inside(outline, middle));
        var near = Math.Max(Near, NearOfLength * Math.Max(right - left, back - front));
        var open = new PriorityQueue<(PlanPoint Middle, double Half), double>();
        Add(middle, Math.Max(right - left, back - front) / 2);
        while (open.TryDequeue(out var square, out var most) && -most > best.Radius + near)
        {
            var half = square.Half / 2;
            foreach (var (x, y) in new[] { (-half, -half), (half, -half), (-half, half), (half, half) })
            {
                Add(square.Middle + new PlanPoint(x, y), half);
            }
        }

        return best;

        void Add(PlanPoint at, double half)
        {
            var inside = Inside(outline, at);
            best = inside > best.Radius ? new InscribedCircle(at, inside) : best;
            open.Enqueue((at, half), -(inside + (half * Math.Sqrt(2))));
        }
    }

    /// <summary>How far to the nearest place of the edge; below zero outside.</summary>
    private static double Inside(Outline outline, PlanPoint point)
    {
        var far = outline.Walls.Min(wall => (point - (wall.From + (wall.Along * Math.Clamp(wall.Foot(point), 0, wall.Length)))).Length);
        return outline.Contains(point) ? far : -far;
    }
}
