namespace WetCheck.Geometry;

/// <summary>
/// Where one drain may stand so that a level rim keeps within the limits: one convex set. Along the folds its edge is
/// made of arcs of conics,
/// a corner the focus and a wall the directrix; square to the walls it is a polygon.
/// </summary>
public sealed class DrainRegion
{
    private const int Rays = 720;

    private readonly Strain _strain;

    private DrainRegion(Strain strain, PlanPoint middle)
    {
        (_strain, Middle) = (strain, middle);
        Edge = [.. Traced()];
    }

    /// <summary>A place inside, the farthest from all limits.</summary>
    public PlanPoint Middle { get; }

    /// <summary>Against the clock. The corners stand exactly; arcs between them are points close enough to draw.</summary>
    public IReadOnlyList<PlanPoint> Edge { get; }

    /// <returns>Null where no place will do.</returns>
    public static DrainRegion? Of(Outline outline, Grate grate, FallLimits limits)
    {
        var strain = new Strain(outline, grate, limits.Measure);
        var (middle, over) = strain.Least(limits.Ratio);
        return over > 1e-9 ? null : new DrainRegion(strain.At(limits.Ratio), middle);
    }

    /// <summary>How far from <see cref="Middle"/> the edge lies this way.</summary>
    /// <param name="way">Of length 1.</param>
    public double EdgeAlong(PlanPoint way) => _strain.EdgeAlong(Middle, way).Distance;

    public bool Holds(PlanPoint drain) => _strain.Over(drain) <= 1e-9;

    /// <summary>The place nearest to this one.</summary>
    public PlanPoint Nearest(PlanPoint drain)
    {
        if (Holds(drain))
        {
            return drain;
        }

        var best = Edge.MinBy(point => (point - drain).Length);
        var at = Math.Atan2(best.Y - Middle.Y, best.X - Middle.X);
        var turn = Search.Least(angle => (Along(angle) - drain).Length, at - (Math.Tau / Rays), at + (Math.Tau / Rays));
        var refined = Along(turn);
        return (refined - drain).Length < (best - drain).Length ? refined : best;
    }

    private IEnumerable<PlanPoint> Traced()
    {
        for (var ray = 0; ray < Rays; ray++)
        {
            var (from, to) = (ray * Math.Tau / Rays, (ray + 1) * Math.Tau / Rays);
            yield return Along(from);

            // Where another limit takes over there is a corner.
            var (first, last) = (Pair(from), Pair(to));
            if (first != last)
            {
                for (var step = 0; step < 60 && to - from > 1e-15; step++)
                {
                    var half = (from + to) / 2;
                    (from, to) = Pair(half) == first ? (half, to) : (from, half);
                }

                yield return Along(from);
            }
        }
    }

    private PlanPoint Along(double angle) => Middle + (Way(angle) * EdgeAlong(Way(angle)));

    private (int, int) Pair(double angle) => _strain.EdgeAlong(Middle, Way(angle)).Limit;

    private static PlanPoint Way(double angle) => Math.SinCos(angle) is var (sin, cos) ? new(cos, sin) : default;
}
