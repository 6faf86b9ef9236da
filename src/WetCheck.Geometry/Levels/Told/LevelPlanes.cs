using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The planes of a job's floor, read by levels, and what limits say of them.</summary>
internal sealed class LevelPlanes
{
    private readonly Outline _outline;
    private readonly IReadOnlyList<PanLimits> _limits;
    private readonly FloorFacets? _floor;
    private readonly int? _channel;

    /// <param name="grates">All ways in which the floor may have been set out; none: not known.</param>
    public LevelPlanes(Outline outline, PlanPoint? drain, IReadOnlyList<Grate> grates,
        IReadOnlyList<LevelPoint> points, IReadOnlyList<PanLimits> limits)
    {
        (_outline, _limits) = (outline, limits);
        if (drain is not { } at || grates.Count == 0)
        {
            return;
        }

        if (grates is [var channel] && ChannelWall.Of(outline, at, channel) is { } along)
        {
            _channel = along.Wall;
            Facets = [FacetLevels.Of(along.Wall, points,
                [.. Enumerable.Range(0, points.Count)
                .Where(one => IsBefore(outline.Walls[along.Wall], channel, points[one].At - at))])];
        }
        else if (grates.All(grate => outline.IsSeenWholeFrom(at) && outline.Walls.All(wall => Pan.Run(wall, at, grate) > 1e-9)))
        {
            _floor = new FloorFacets(outline, at, grates);
            Facets = _floor.Of(points);
        }
    }

    /// <summary>Straight before the channel, not beside it.</summary>
    private static bool IsBefore(Wall wall, Grate channel, PlanPoint from) =>
        Math.Abs(wall.Along.Dot(from)) <= channel.Reach(wall.Along) + 1e-9 && wall.Inward.Dot(from) >= channel.Reach(wall.Inward) - 1e-9;

    /// <summary>Empty where it is not known which planes the floor should have.</summary>
    public IReadOnlyList<FacetLevels> Facets { get; } = [];

    public IReadOnlyList<LevelPlane> All(IReadOnlyList<LevelPoint> points)
    {
        var names = new SideNames(_outline);
        if (_channel is { } channel)
        {
            return [Plane(names.Of(channel), Facets[0], _outline.Walls[channel].Inward, points)];
        }

        return _floor is null ? [] :
        [
            .. names.Clockwise.Select(wall => Plane(names.Of(wall), Facets[wall], _outline.Walls[wall].Inward * -1, points)),
            .. names.Clockwise.Select(corner => Fold(names.OfCorner(corner), corner)).OfType<LevelPlane>(),
        ];
    }

    private LevelPlane Plane(string side, FacetLevels facet, PlanPoint uphill, IReadOnlyList<LevelPoint> points)
    {
        var fall = facet.Points.Count == 0 ? null : facet.Along(uphill);
        return new LevelPlane(side, null, facet.Points.Count, fall?.Estimate, Known(fall?.Least), Known(fall?.Most),
            facet.Unevenness(points),
            fall is null ? [] : [.. _limits.Where(limit => !limit.AlongFolds).Select(limit =>
                new LevelHeld(limit, fall.AtLeast(limit.Least.Value.Approximate), fall.AtMost(limit.Most.Value.Approximate)))]);
    }

    private LevelPlane? Fold(string name, int corner) => _floor!.Fold(corner, Facets) is not { } fall ? null
        : new LevelPlane(name, new Spot(_outline.Corners[corner].X, _outline.Corners[corner].Y), 0, fall.Estimate,
            Known(fall.Least), Known(fall.Most), 0,
            [.. _limits.Where(limit => limit.AlongFolds)
                .Select(limit => new LevelHeld(limit, fall.AtLeast(limit.Least.Value.Approximate), null))]);

    private static double? Known(double? bound) => bound is { } known && double.IsFinite(known) ? known : null;
}
