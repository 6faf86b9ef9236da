namespace WetCheck.Geometry;

/// <summary>
/// Which planes a floor should have, from its outline and its drain and never from the readings; and which readings lie
/// on each.
/// </summary>
public sealed class FloorFacets
{
    /// <summary>Readings this near to a fold serve both of its planes.</summary>
    private const double Hair = 1e-6;

    private readonly Outline _outline;
    private readonly PlanPoint _drain;
    private readonly IReadOnlyList<Grate> _grates;
    private readonly IReadOnlyList<IReadOnlyList<IReadOnlyList<PlanPoint>>> _regions;

    /// <param name="grates">All ways in which the floor may have been set out. A reading serves a wall's plane only
    /// where it lies on it by each.</param>
    /// <exception cref="ArgumentException">The drain does not see every wall.</exception>
    public FloorFacets(Outline outline, PlanPoint drain, IReadOnlyList<Grate> grates)
    {
        (_outline, _drain, _grates) = (outline, drain, grates);
        _regions = [.. grates.Select(grate => PanFacets.Of(new Pan(outline, drain, grate), 1)
            .Where(facet => facet.Wall is not null).OrderBy(facet => facet.Wall).Select(facet => facet.Corners)
            .ToList())];
    }

    /// <summary>One for each wall.</summary>
    public IReadOnlyList<FacetLevels> Of(IReadOnlyList<LevelPoint> points) => [.. _outline.Walls.Select((_, wall) =>
        FacetLevels.Of(wall, points, [.. Enumerable.Range(0, points.Count).Where(at => IsOn(wall, points[at].At))]))];

    /// <summary>
    /// The fall along the fold from a corner: as far as both of its planes allow it. Null where no fold is left by any
    /// way to set it out.
    /// </summary>
    /// <param name="facets">As <see cref="Of"/> gives them.</param>
    public FallBounds? Fold(int corner, IReadOnlyList<FacetLevels> facets)
    {
        // To a round strainer a corner has a cone, that neither plane tells.
        if (_outline.IsInsideOut(corner) || _grates.Any(grate => grate.Radius > 0))
        {
            return null;
        }

        var count = _outline.Walls.Count;
        var ways = _grates.SelectMany(grate => Pan.FoldEnds(_outline, corner, grate))
            .Select(end => (_outline.Corners[corner] - _drain - end).Unit)
            .Select(way => Both(facets[(corner + count - 1) % count].Along(way), facets[corner].Along(way))).OfType<FallBounds>().ToList();
        return ways.Count == 0 ? null
            : new FallBounds(ways.Average(way => way.Estimate), ways.Min(way => way.Least), ways.Max(way => way.Most));
    }

    private static FallBounds? Both(FallBounds? one, FallBounds? other)
    {
        if (one is null || other is null)
        {
            return null;
        }

        var (least, most) = (Math.Max(one.Least, other.Least), Math.Min(one.Most, other.Most));
        return least > most + 1e-12 ? null : new FallBounds((one.Estimate + other.Estimate) / 2, least, most);
    }

    private bool IsOn(int wall, PlanPoint at) => _regions.All(walls => Holds(walls[wall], at));

    private static bool Holds(IReadOnlyList<PlanPoint> convex, PlanPoint at) =>
        convex.Count > 2 && Enumerable.Range(0, convex.Count).All(corner =>
        convex[(corner + 1) % convex.Count] - convex[corner] is var side
            && (side.Length < Hair || side.Unit.Cross(at - convex[corner]) > -Hair));
}
