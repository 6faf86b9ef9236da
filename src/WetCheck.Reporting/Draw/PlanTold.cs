using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>A plan in words, for who can't see it: out of the same figures as its lines.</summary>
internal static class PlanTold
{
    public static IEnumerable<string> Of(PanReport falls, PanCase? one, DrawSays says)
    {
        var (pan, phrases) = (says.Pan, says.Phrases);
        yield return phrases[Phrase.Draw.PlanTold];
        yield return phrases.Say(Phrase.Pan.Walls,
            ("walls", string.Join("; ",
            falls.Sides.Select(side => $"{says.Wall(side.Name)} {says.Size(side.Length)}"))));
        if (falls.Drain is { } drain)
        {
            yield return phrases.Say(Phrase.Pan.Drain, ("at", pan.Place(drain)));
        }

        if (one is not { Height: { } height })
        {
            yield break;
        }

        foreach (var line in Case(one, says))
        {
            yield return line;
        }

        yield return phrases.Say(Phrase.Pan.AtHeight, ("height", pan.Length(height)));
        foreach (var wall in one.Walls)
        {
            yield return phrases.Say(one.Taken == DrainTaken.ChannelAtWall ? Phrase.Pan.ToWall : Phrase.Pan.Wall,
                ("side", pan.Side(wall.Side)), ("fall", pan.Fall(wall.Slope)));
        }

        foreach (var fold in one.Folds)
        {
            yield return phrases.Say(Phrase.Pan.Fold, ("corner", pan.Corner(fold)), ("fall", pan.Fall(fold.Slope)));
        }

    }

    /// <summary>How the falls are read, whether that fits, and what is dashed.</summary>
    public static IEnumerable<string> Case(PanCase one, DrawSays says)
    {
        yield return says.Phrases.Say(Phrase.Draw.Case, ("measure", says.Pan.Measure(one.Limits)),
            ("taken", says.Pan.Taken(one.Taken)), ("limits", says.Pan.Limits(one.Limits)));
        if (one.Feasible == Tri.No)
        {
            yield return says.Phrases[Phrase.Draw.DoesNotFit];
        }

        if (one.Region.Count > 2)
        {
            yield return says.Phrases[Phrase.Draw.Region];
        }
    }
}
