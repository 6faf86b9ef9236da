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
        return plan.Canvas.Svg("plan", says.Phrases.Say(Phrase.Draw.PlanTitle, ("job", walk.Job.Name)),
            [.. PlanTold.Of(floor.Falls, drawn, says)], () => Below(plan, drawn));
    }

    /// <summary>What the falls are told of, and whether that fits.</summary>
    private static void Below(PlanBase plan, PanCase? drawn)
    {
        var lines = drawn is null ? [] : PlanTold.Case(drawn, plan.Says).SelectMany(line => Column.Wrap(line, width: 64)).ToList();
        foreach (var line in lines)
        {
            plan.Canvas.TextFrom(line, new Mm(plan.Canvas.Extent.Left, plan.Canvas.Extent.Bottom + (line == lines[0] ? 6 : 3)));
        }

        plan.Bar();
    }

    /// <summary>
    /// With the grate where it is told, as the drain is drawn. The one that fits, along the folds where that fits too;
    /// else the first that has heights.
    /// </summary>
    private static PanCase? Drawn(PanReport falls) => falls.Cases.Where(one => one.Taken == falls.Cases[^1].Taken)
        .OrderByDescending(one => one is { Feasible: Tri.Yes, Mark: not null })
            .ThenByDescending(one => one.Limits.AlongFolds).FirstOrDefault(one => one.Height is not null);
}
