using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The plan of a floor: its sizes, falls, heights, folds, and where a drain may stand.</summary>
public static class PlanDrawing
{
    private const double Most = 110;

    /// <returns>Null where the floor is not known.</returns>
    public static string? Of(FloorReport floor, Walk walk, string language)
    {
        if (walk.Floor.Outline.Count == 0)
        {
            return null;
        }

        var says = new DrawSays(new PanSays(new Phrases(walk.Book, language), walk.Book, walk.Job.Metric == true));
        var plan = new PlanBase(walk.Floor, says, Most);
        var drawn = Drawn(floor.Falls);
        plan.Walls();
        plan.Drain();
        if (drawn is not null)
        {
            PlanFalls.Draw(plan, walk.Floor, drawn);
        }

        plan.Names();
        PlanSizes.Draw(plan, walk.Floor);
        return plan.Canvas.Svg("plan", says.Phrases.Say("draw.plan-title", ("job", walk.Job.Name)), [.. PlanTold.Of(floor.Falls, drawn, says)], plan.Bar);
    }

    /// <summary>The one that fits, along the folds where that fits too; else the first that has heights.</summary>
    private static PanCase? Drawn(PanReport falls) =>
        falls.Cases.OrderByDescending(one => one is { Feasible: Tri.Yes, Mark: not null }).ThenByDescending(one => one.Limits.AlongFolds).FirstOrDefault(one => one.Height is not null);
}
