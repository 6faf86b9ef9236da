using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>One measure with the drain taken one way: the strictest limit in full, laxer ones in a line each.</summary>
internal static class PanCaseText
{
    private const string Indent = "  ";

    public static IEnumerable<string> Of(IReadOnlyList<PanCase> cases, PanSays says)
    {
        var first = cases[0];
        var title = says.Phrases.Say(Phrase.Pan.Title, ("measure", says.Measure(first.Limits)),
            ("taken", says.Taken(first.Taken))).ToUpperInvariant();
        foreach (var line in Column.Wrap(first.Part is { } part
            ? says.Phrases.Say(Phrase.Pan.Part, ("title", title), ("at", says.Place(part))) : title))
        {
            yield return line;
        }

        for (var at = 0; at < cases.Count; at++)
        {
            var isLaxer =
                at > 0 && cases[at].Limits.Least.Value <= first.Limits.Least.Value
                && cases[at].Limits.Most.Value >= first.Limits.Most.Value;
            foreach (var line in isLaxer ? [Verdict(cases[at], says)] : Whole(cases[at], says))
            {
                foreach (var wrapped in Column.Wrap(line.TrimStart(), line.StartsWith(' ') ? Indent + Indent : Indent))
                {
                    yield return wrapped;
                }
            }
        }
    }

    private static IEnumerable<string> Whole(PanCase one, PanSays says)
    {
        var phrases = says.Phrases;
        yield return Verdict(one, says);
        foreach (var hidden in one.Hidden)
        {
            yield return phrases.Say(Phrase.Pan.Hides, ("side", says.Side(hidden.Side)), ("at", says.Place(hidden.By)));
        }

        if (one.Height is { } height)
        {
            yield return phrases.Say(Phrase.Pan.AtHeight, ("height", says.Length(height)));
            foreach (var walls in one.Walls.GroupBy(wall => Steep(wall.Slope, one, says)))
            {
                yield return " "
                    + phrases.Say(one.Taken == DrainTaken.ChannelAtWall ? Phrase.Pan.ToWall : Phrase.Pan.Wall,
                    ("side", says.Alike(walls.Select(wall => says.Side(wall.Side)))), ("fall", walls.Key));
            }

            foreach (var folds in one.Folds.GroupBy(fold => says.Fall(fold.Slope)))
            {
                yield return " " + (folds.Count() == one.Folds.Count
                    ? phrases.Say(Phrase.Pan.AllFolds, ("fall", folds.Key))
                    : phrases.Say(Phrase.Pan.Fold, ("corner", says.Alike(folds.Select(says.Corner))), ("fall", folds.Key)));
            }
        }

        foreach (var end in one.Ends)
        {
            yield return phrases.Say(Phrase.Pan.End, ("corner", says.Side(end.Corner)), ("far", says.Length(end.Far)),
                ("height", says.Length(end.Height)));
        }

        if (one is { Steepest: { } steepest, Folds.Count: > 0 })
        {
            yield return phrases.Say(Phrase.Pan.Steepest, ("steepest", Steep(steepest, one, says)),
                ("flattest", says.Fall(one.Folds.Min(fold => fold.Slope))),
                ("corner", says.Corner(one.Folds.MinBy(fold => fold.Slope)!)));
        }

        if (one.Taken != DrainTaken.ChannelAtWall)
        {
            yield return Region(one, says);
        }

        foreach (var way in one.Ways.Select((way, at) =>
            phrases.Say(at == 0 ? Phrase.Pan.FirstWay : Phrase.Pan.NextWay, ("way", says.Way(way)))))
        {
            yield return way;
        }
    }

    /// <summary>What is too steep is never shown as the limit; a hundred millionth is rounding of the machine.</summary>
    private static string Steep(double slope, PanCase one, PanSays says) =>
        one.Feasible == Tri.No ? says.Fall(slope - 1e-8, Rounding.Up) : says.Fall(slope);

    private static string Verdict(PanCase one, PanSays says)
    {
        var (least, most) = one.Window ?? default;
        var said = one switch
        {
            { Feasible: Tri.Unknown } => says.Phrases[Phrase.Pan.NoPlaceTold],
            { Window: null } => says.Phrases[Phrase.Pan.NotSeen],
            { Feasible: Tri.No } => says.Phrases.Say(Phrase.Pan.NoRim, ("least", says.Length(least)), ("most", says.Length(most))),
            { Mark: { } mark } =>
                says.Phrases.Say(one.Taken == DrainTaken.ChannelAtWall ? Phrase.Pan.RimFar : Phrase.Pan.Rim,
                ("mark", says.Length(mark)), ("least", says.Length(least, Rounding.Up)),
                ("most", says.Length(most, Rounding.Down))),
            _ => says.Phrases.Say(Phrase.Pan.NoMark, ("least", says.Length(least)), ("most", says.Length(most))),
        };
        return says.Phrases.Say(Phrase.Pan.Verdict, ("limits", says.Limits(one.Limits)), ("verdict", said));
    }

    private static string Region(PanCase one, PanSays says)
    {
        if (one.Region.Count == 0)
        {
            return says.Phrases[Phrase.Pan.Nowhere];
        }

        var extent = says.Phrases.Say(one.Region.Count == 4 ? Phrase.Pan.Region : Phrase.Pan.RegionRound,
            ("left", says.Length(one.Region.Min(at => at.X), Rounding.Up)),
                ("right", says.Length(one.Region.Max(at => at.X), Rounding.Down)),
            ("front", says.Length(one.Region.Min(at => at.Y), Rounding.Up)),
                ("back", says.Length(one.Region.Max(at => at.Y), Rounding.Down)));
        return one is { Feasible: Tri.No, Nearest: { } near }
            ? $"{extent} {says.Phrases.Say(Phrase.Pan.Nearest, ("at", says.Place(near)))}" : extent;
    }
}
