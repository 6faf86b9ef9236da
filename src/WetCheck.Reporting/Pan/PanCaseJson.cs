using WetCheck.Model;
using static WetCheck.Reporting.JsonFigures;

namespace WetCheck.Reporting;

/// <summary>One case of a floor's falls in JSON.</summary>
internal static class PanCaseJson
{
    public static PanCaseShape Shape(PanCase one, PanSays says) => new()
    {
        Measure = LimitsJson.Measure(one.Limits),
        Least = LimitsJson.PerFoot(one.Limits.Least),
        Most = LimitsJson.PerFoot(one.Limits.Most),
        Held = LimitsJson.Answers(one.Limits),
        Drain = Taken(one.Taken),
        Feasible = one.Feasible,
        RimWindow = Known(one.Window),
        Rim = Known(one.Mark),
        Height = Known(one.Height),
        Walls = [.. one.Walls.Select(Wall)],
        Valleys = [.. one.Folds.Select(fold => Valley(fold, says))],
        Steepest = Known(one.Steepest * 12),
        Flattest = Known(one.Folds.Count == 0 ? null : one.Folds.Min(fold => fold.Slope) * 12),
        Region = Ring(one.Region),
        Nearest = Known(one.Nearest),
        Part = Known(one.Part),
        Ends = [.. one.Ends.Select(end => new PanEndShape { Corner = end.Corner, Far = Round(end.Far), Height = Round(end.Height) })],
        Hidden = [.. one.Hidden.Select(hidden => new HiddenShape { Side = hidden.Side, By = Place(hidden.By) })],
        WaysOut = [.. one.Ways.Select(way => new WayOutShape { Kind = way.Kind, Say = says.Way(way), Cost = Round(way.Cost) })],
    };

    public static string Taken(DrainTaken taken) => taken switch
    {
        DrainTaken.Point => "point",
        DrainTaken.Grate => "grate",
        DrainTaken.Channel => "channel",
        _ => "channel-at-wall",
    };

    private static PanWallShape Wall(PanWall wall) => new()
    {
        Side = wall.Side,
        Length = Round(wall.Length),
        Run = Round(wall.Run),
        Slope = Round(wall.Slope * 12),
    };

    private static ValleyShape Valley(PanFold fold, PanSays says) => new()
    {
        Corner = fold.Corner.Length > 0 ? fold.Corner : says.Place(fold.At),
        At = Place(fold.At),
        Length = Round(fold.Length),
        Slope = Round(fold.Slope * 12),
    };
}
