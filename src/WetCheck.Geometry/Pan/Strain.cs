namespace WetCheck.Geometry;

/// <summary>
/// By how much a place of the drain fails the limits: the farthest way less so many times the nearest wall. Convex in
/// the place, because distances
/// to corners are and distances to lines are straight.
/// </summary>
internal sealed class Strain
{
    private readonly Outline _outline;
    private readonly Grate _grate;
    private readonly FallMeasure _measure;
    private readonly double _ratio;
    private readonly IReadOnlyList<(PlanPoint Corner, int Index)> _far;
    private readonly IReadOnlyList<double> _reach;

    public Strain(Outline outline, Grate grate, FallMeasure measure, double ratio = 1)
    {
        (_outline, _grate, _measure, _ratio) = (outline, grate, measure, ratio);

        // From a corner to a corner of the grate is from the corner, moved by as much, to the middle.
        _far = [.. outline.Corners.SelectMany((corner, index) => Pan.FoldEnds(outline, index, grate).Select(end => (corner - end, index)))];
        _reach = [.. outline.Walls.Select(wall => grate.Reach(wall.Inward * -1))];
    }

    public Strain At(double ratio) => new(_outline, _grate, _measure, ratio);

    public double Over(PlanPoint drain) => Far(drain) - (_ratio * Near(drain));

    /// <summary>The place where the most is left to the limits, and by how much the limits are failed there.</summary>
    public (PlanPoint Place, double Over) Least(double ratio)
    {
        var at = At(ratio);
        var (left, right) = (_outline.Corners.Min(corner => corner.X), _outline.Corners.Max(corner => corner.X));
        var (front, back) = (_outline.Corners.Min(corner => corner.Y), _outline.Corners.Max(corner => corner.Y));
        double Across(double x) => Search.Least(y => at.Over(new(x, y)), front, back);
        var best = Search.Least(x => at.Over(new(x, Across(x))), left, right);
        var place = new PlanPoint(best, Across(best));
        return (place, at.Over(place));
    }

    /// <summary>
    /// The best place for this floor and the ratio of farthest to nearest there: no other place has less (Dinkelbach's
    /// steps).
    /// </summary>
    public (PlanPoint Place, double Ratio) Best()
    {
        var (place, _) = Least(1);
        var ratio = double.PositiveInfinity;
        for (var step = 0; step < 40 && Near(place) > 0 && Far(place) / Near(place) < ratio - 1e-13; step++)
        {
            ratio = Far(place) / Near(place);
            (place, _) = Least(ratio);
        }

        return (place, ratio);
    }

    /// <summary>
    /// How far the edge of what is allowed lies from an allowed place, and the pair that sets it: what is far, and the
    /// wall.
    /// </summary>
    /// <param name="way">Of length 1.</param>
    public (double Distance, (int Far, int Wall) Limit) EdgeAlong(PlanPoint from, PlanPoint way)
    {
        var edge = (Distance: double.PositiveInfinity, Limit: (-1, -1));
        for (var wall = 0; wall < _outline.Walls.Count; wall++)
        {
            var (distance, closing) = (Distance(wall, from), _outline.Walls[wall].Inward.Dot(way));
            if (_measure == FallMeasure.Square)
            {
                for (var far = 0; far < _outline.Walls.Count; far++)
                {
                    var over = Distance(far, from) - (_ratio * distance);
                    var rise = _outline.Walls[far].Inward.Dot(way) - (_ratio * closing);
                    if (far != wall && rise > 0 && Math.Max(0, -over) / rise < edge.Distance)
                    {
                        edge = (Math.Max(0, -over) / rise, (far, wall));
                    }
                }
            }
            else
            {
                for (var far = 0; far < _far.Count; far++)
                {
                    var reached = Reached(from - _far[far].Corner, way, distance + (_grate.Radius / _ratio), closing);
                    if (reached < edge.Distance)
                    {
                        edge = (reached, (far, wall));
                    }
                }
            }
        }

        return edge;
    }

    /// <summary>The least t ≥ 0 at which |w + t·u| is the ratio times (d + t·m), the wall still in front.</summary>
    private double Reached(PlanPoint w, PlanPoint u, double d, double m)
    {
        var k = _ratio;
        var (a, b, c) = (1 - (k * k * m * m), w.Dot(u) - (k * k * d * m), w.Dot(w) - (k * k * d * d));
        if (c >= 0)
        {
            return 0;
        }

        if (Math.Abs(a) < 1e-14)
        {
            return b > 0 ? -c / (2 * b) : double.PositiveInfinity;
        }

        var root = (b * b) - (a * c);
        if (root < 0)
        {
            return double.PositiveInfinity;
        }

        // c < 0: with a > 0 one root on each side; with a < 0 both on one side. Written so that nothing cancels.
        var q = -(b + (Math.Sign(b) >= 0 ? Math.Sqrt(root) : -Math.Sqrt(root)));
        return new[] { q / a, c / q }.Where(t => t > 0 && d + (t * m) >= -1e-12).DefaultIfEmpty(double.PositiveInfinity).Min();
    }

    private double Far(PlanPoint drain) => _measure == FallMeasure.Square
        ? Enumerable.Range(0, _outline.Walls.Count).Max(wall => Distance(wall, drain))
        : _far.Max(far => (far.Corner - drain).Length) - _grate.Radius;

    private double Near(PlanPoint drain) => Enumerable.Range(0, _outline.Walls.Count).Min(wall => Distance(wall, drain));

    private double Distance(int wall, PlanPoint drain) => _outline.Walls[wall].Distance(drain) - _reach[wall];
}
