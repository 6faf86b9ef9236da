using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>Holds one floor with a level rim against one limit, the drain taken one way.</summary>
/// <param name="beyond">Another drain's part of the floor, past the last wall.</param>
internal sealed class FloorCase(Outline outline, bool metric, OtherPart? beyond = null)
{
    private readonly SideNames _names = new(outline, hasRidge: beyond is not null);

    public IReadOnlyList<PanSide> Sides => [.. _names.Clockwise.Select(wall => new PanSide(_names.Of(wall), outline.Walls[wall].Length))];

    /// <param name="place">Of the drain's middle; null: only where one may stand is told.</param>
    public PanCase Of(PanLimits limits, DrainTaken taken, Grate grate, PlanPoint? place)
    {
        var fall = new FallLimits(limits.Least.Value.Approximate, limits.Most.Value.Approximate,
            limits.AlongFolds ? FallMeasure.Valley : FallMeasure.Square);
        var told = PanCase.Of(limits, taken) with { Part = beyond is not null && place is { } own ? new Spot(own.X, own.Y) : null };
        if (place is { } at && taken == DrainTaken.Channel && ChannelWall.Of(outline, at, grate) is { } wall)
        {
            return OnePlane(told with { Taken = DrainTaken.ChannelAtWall }, wall, fall);
        }

        var region = DrainRegion.Of(outline, grate, fall);
        told = told with { Region = region is null ? [] : FewerPoints.Of(region.Edge) };
        if (place is not { } drain)
        {
            return told;
        }

        var near = region?.Nearest(drain);
        told = told with { Nearest = near is { } spot ? new Spot(spot.X, spot.Y) : null };
        return !outline.IsSeenWholeFrom(drain) || outline.Walls.Any(one => Pan.Run(one, drain, grate) <= 1e-9)
            ? told with { Feasible = Tri.No, Hidden = [.. Hidden(drain)], Ways = Ways(drain, grate, fall) }
            : Level(told, new Pan(outline, drain, grate), fall);
    }

    private PanCase Level(PanCase told, Pan pan, FallLimits fall)
    {
        var window = beyond?.Shared(pan.RimWindow(fall), pan.Grate, fall) ?? pan.RimWindow(fall);
        var (feasible, mark) = (window.Least <= window.Most * (1 + 1e-12), Marks(window));
        var height = mark ?? window.Least;
        return told with
        {
            Feasible = feasible ? Tri.Yes : Tri.No,
            Window = window,
            Mark = mark,
            Height = height,
            Walls = [.. _names.Clockwise.Select(wall =>
                new PanWall(_names.Of(wall), outline.Walls[wall].Length, pan.Runs[wall], height / pan.Runs[wall]))],
            Folds = [.. _names.Clockwise.Where(corner => !outline.IsInsideOut(corner)).Select(corner =>
                new PanFold(_names.OfCorner(corner), new Spot(outline.Corners[corner].X, outline.Corners[corner].Y),
                    pan.Folds[corner], height / pan.Folds[corner]))],
            Steepest = PanFacets.Of(pan, height).Where(facet => facet.Area > 1e-9).Max(facet => facet.Slope.Length),
            Ways = feasible ? [] : Ways(pan.Drain, pan.Grate, fall),
        };
    }

    /// <summary>A channel along a wall: near and far are one plane; beside a shorter one the corners are a little higher.</summary>
    private PanCase OnePlane(PanCase told, ChannelWall channel, FallLimits fall)
    {
        var window = channel.Window(fall);
        var height = Marks(window) ?? window.Least;
        var ends = channel.Ends.Select(end =>
            new PanEnd(_names.OfCorner(end.Corner), end.Far,
            Marks((fall.Least * end.Far, fall.Most * end.Far)) ?? fall.Least * end.Far)).ToList();
        return told with
        {
            Feasible = window.Least <= window.Most * (1 + 1e-12) ? Tri.Yes : Tri.No,
            Window = window,
            Mark = Marks(window),
            Height = height,
            Walls = [new PanWall(_names.Of(channel.Wall), outline.Walls[channel.Wall].Length, channel.Depth, height / channel.Depth)],
            Steepest = ends.Select(end => channel.SlopeBeside(end.Far, height, end.Height)).Append(height / channel.Depth).Max(),
            Ends = ends,
        };
    }

    /// <summary>The lowest mark of the tape in a window: a sixteenth of an inch, or a millimetre.</summary>
    private double? Marks((double Least, double Most) window)
    {
        var mark = metric ? 1 / 25.4 : 1 / 16d;
        var lowest = Math.Ceiling((window.Least / mark) - 1e-9) * mark;
        return lowest <= window.Most * (1 + 1e-9) ? lowest : null;
    }

    private IReadOnlyList<PanWay> Ways(PlanPoint drain, Grate grate, FallLimits fall) =>
        [.. WaysOut.Of(outline, drain, grate, fall).Select(way => WayFigures.Of(way, _names))];

    /// <summary>A wall is hidden by the corner standing into the room at its end, or by the one nearest to it.</summary>
    private IEnumerable<PanHidden> Hidden(PlanPoint drain)
    {
        var corners = Enumerable.Range(0, outline.Corners.Count).Where(outline.IsInsideOut).ToList();
        foreach (var at in _names.Clockwise.Where(wall => outline.Walls[wall].Distance(drain) <= 1e-9 && corners.Count > 0))
        {
            var wall = outline.Walls[at];
            var by = outline.Corners[corners.MinBy(corner =>
                Math.Min((outline.Corners[corner] - wall.From).Length, (outline.Corners[corner] - wall.To).Length))];
            yield return new PanHidden(_names.Of(at), new Spot(by.X, by.Y));
        }
    }
}
