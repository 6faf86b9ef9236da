using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The plan of a floor that was read by levels: lines of one height, where water stands, what to add or to shave.</summary>
public static class ContourDrawing
{
    private const double Most = 110;

    /// <returns>Null where the floor is not known, or too few levels were read.</returns>
    public static string? Of(FloorReport floor, Walk walk, string language)
    {
        if (walk.Floor.Outline.Count == 0 || floor.Levels.Contours.Count == 0)
        {
            return null;
        }

        var says = new DrawSays(new PanSays(new Phrases(walk.Book, language), walk.Book, walk.Job.Metric == true));
        var plan = new PlanBase(walk.Floor, says, Most);
        plan.Walls();
        plan.Drain();
        foreach (var contour in floor.Levels.Contours)
        {
            for (var at = 0; at + 1 < contour.Line.Count; at++)
            {
                plan.Canvas.Line(plan.At(contour.Line[at]), plan.At(contour.Line[at + 1]), Pen.Thin);
            }
        }

        plan.Names();
        PlanSizes.Draw(plan, walk.Floor);
        foreach (var one in floor.Levels.Contours.GroupBy(contour => contour.Height)
            .Select(alike => alike.MaxBy(contour => contour.Line.Count)!))
        {
            plan.Canvas.Label(says.Pan.Length(one.Height), plan.At(one.Line[one.Line.Count / 3]));
        }

        foreach (var pond in floor.Levels.Ponds.Take(Limits.NamedPonds))
        {
            plan.Canvas.Circle(plan.At(pond.At), 1.6, Pen.Seen);
            plan.Canvas.Label(says.Phrases.Say(Phrase.Draw.Pond, ("depth", says.Pan.Length(pond.Depth))), plan.At(pond.At), isBold: true);
        }

        return plan.Canvas.Svg("contours", says.Phrases.Say(Phrase.Draw.ContoursTitle, ("job", walk.Job.Name)),
            [.. Told(floor.Levels, says)], plan.Bar);
    }

    private static IEnumerable<string> Told(LevelReport levels, DrawSays says)
    {
        yield return says.Phrases[Phrase.Draw.ContoursTold];
        foreach (var height in levels.Contours.Select(contour => contour.Height).Distinct().Order())
        {
            yield return says.Phrases.Say(Phrase.Draw.Contour, ("height", says.Pan.Length(height)));
        }

        foreach (var pond in levels.Ponds)
        {
            yield return says.Phrases.Say(Phrase.Draw.PondTold, ("depth", says.Pan.Length(pond.Depth)), ("at", says.Pan.Place(pond.At)));
        }
    }
}
