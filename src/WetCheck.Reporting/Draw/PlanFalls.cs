using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>
/// Falls on a plan: an arrow down each plane, a line along each fold, heights in the corners, and where a drain may
/// stand.
/// </summary>
internal static class PlanFalls
{
    public static void Draw(PlanBase plan, FloorPlan floor, PanCase one)
    {
        var (canvas, says) = (plan.Canvas, plan.Says.Pan);
        if (one.Region.Count > 2)
        {
            canvas.Ring([.. one.Region.Select(plan.At)], Pen.Thin, dash: Dash.Short);
        }

        if (floor.Drain is not { } drain || one.Part is not null)
        {
            return;
        }

        foreach (var fold in one.Folds)
        {
            canvas.Line(plan.At(fold.At), End(plan, floor, fold.At, drain), Pen.Thin);
        }

        foreach (var wall in one.Walls)
        {
            if (floor.Sides.FirstOrDefault(side => side.Name == wall.Side) is { } side)
            {
                Arrow(plan, one, side, drain, plan.Says.Fall(wall.Slope));
            }
        }

        if (one is { Height: { } rim, Taken: not DrainTaken.ChannelAtWall })
        {
            foreach (var corner in floor.Outline)
            {
                canvas.Label("+" + says.Length(rim), plan.At(corner) + ((plan.At(drain) - plan.At(corner)).Unit * 5));
            }
        }
    }

    /// <summary>Down the plane, square to its wall.</summary>
    private static void Arrow(PlanBase plan, PanCase one, PlanSide side, Spot drain, string fall)
    {
        var (from, to, middle) = (plan.At(side.From), plan.At(side.To), plan.At(drain));
        var along = (to - from).Unit;
        var far = ((middle - from).X * along.X) + ((middle - from).Y * along.Y);
        var foot = from + (along * Math.Clamp(far, (to - from).Length * 0.2, (to - from).Length * 0.8));
        if (one.Taken == DrainTaken.ChannelAtWall)
        {
            // The channel lies at this wall: the plane comes down to it from the other side.
            var up = along.Turned * -18;
            plan.Canvas.Arrow(foot + (up * 2), foot + (up * 0.6), Pen.Seen);
            plan.Canvas.Label(fall, foot + (up * 1.6));
            return;
        }

        var way = middle - foot;
        var inward = along.Turned * -1;
        var run = (way.X * inward.X) + (way.Y * inward.Y);
        plan.Canvas.Arrow(foot + (inward * (run * 0.2)), foot + (inward * (run * 0.55)), Pen.Seen);
        plan.Canvas.Label(fall, foot + (inward * (run * 0.4)));
    }

    /// <summary>The place of the grate nearest to a corner: the grate's own corner, its edge, or the drain's middle.</summary>
    private static Mm End(PlanBase plan, FloorPlan floor, Spot corner, Spot drain)
    {
        var (from, middle) = (plan.At(corner), plan.At(drain));
        return floor.Grate switch
        {
            null => middle,
            { Radius: > 0 } grate => middle + ((from - middle).Unit * (grate.Radius * 25.4 / plan.Scale)),
            { Corners: var corners } => corners.Select(plan.At).MinBy(at => (at - from).Length),
        };
    }
}
