using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>Ways out with the figures that their sentences have slots for.</summary>
internal static class WayFigures
{
    public static PanWay Of(WayOut way, SideNames names) => way switch
    {
        WayOut.DipRim dip =>
            new("dip-rim", dip.Cost,
            [Length("dip", dip.Rim.Dip), Length("low", dip.Rim.Lowest), Length("high", dip.Rim.Highest)]),
        WayOut.MoveDrain move => new("move-drain", move.Cost, [Length("by", move.By), Place("to", move.To), Length("rim", move.Rim)]),
        WayOut.OnePlane plane => new("one-plane", plane.Cost,
            [new PanFigure.Side("side", names.Of(plane.Wall)), Length("depth", plane.Depth),
                Length("low", plane.RimLeast), Length("high", plane.RimMost)]),
        WayOut.TwoDrains two => new("two-drains", two.Cost,
            [Place("from", two.Ridge.From), Place("to", two.Ridge.To), Place("first", two.Drains[0]),
                Place("second", two.Drains[1]), Length("rim", two.Rim), new PanFigure.Fall("steepest", two.Steepest)]),
        WayOut.Split split => new("split", split.Cost,
            [Place("from", split.Line.From), Place("to", split.Line.To), Place("at", split.Low),
                Length("low", split.LowHeight), Length("rim", split.Rim)]),
        WayOut.ConstantFall fall =>
            new("constant-fall", fall.Cost,
            [Length("low", fall.RimLow), Length("high", fall.RimHigh), Length("dip", fall.RimHigh - fall.RimLow)]),
        _ => throw new ArgumentOutOfRangeException(nameof(way), way, "a way without figures"),
    };

    private static PanFigure.Length Length(string slot, double inches) => new(slot, inches);

    private static PanFigure.Place Place(string slot, PlanPoint at) => new(slot, new Spot(at.X, at.Y));
}
