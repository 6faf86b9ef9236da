using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The falls of a floor on a screen.</summary>
public static class PanText
{
    private const string Indent = "  ";

    /// <returns>Lines of at most 78, each ended by a line feed.</returns>
    public static string Of(PanReport pan, Walk walk, string language, string when)
    {
        var phrases = new Phrases(walk.Book, language);
        var says = new PanSays(phrases, walk.Book, walk.Job.Metric == true);
        var lines = new List<string>(ScreenText.Head(Heading.Of(new Telling(walk, phrases), when)));
        lines.AddRange(Block(Phrase.Pan.Floor, Floor(pan, says), says));
        lines.AddRange(Block(Phrase.Pan.Missing, pan.Missing.Select(says.Missing), says));
        lines.AddRange(Block(Phrase.Pan.InForce, Limits(pan, says), says));
        foreach (var alike in pan.Cases.GroupBy(one => (one.Part, one.Limits.AlongFolds, one.Taken)))
        {
            lines.Add("");
            lines.AddRange(PanCaseText.Of([.. alike], says));
        }

        lines.Add("");
        lines.AddRange(Column.Wrap(phrases[Phrase.Pan.How]));
        lines.AddRange(Column.Wrap(phrases[Phrase.Close.Record]));
        return string.Join('\n', lines) + "\n";
    }

    private static IEnumerable<string> Block(string heading, IEnumerable<string> said, PanSays says)
    {
        var lines = said.SelectMany(one => Column.Wrap(one, Indent)).ToList();
        return lines.Count == 0 ? [] : ["", says.Phrases[heading], .. lines];
    }

    private static IEnumerable<string> Floor(PanReport pan, PanSays says)
    {
        if (pan.Outline.Count > 0)
        {
            yield return Sentence.Capital(says.Phrases.Say(Phrase.Value.Outline,
                ("corners", string.Join("; ", pan.Outline.Select(at => $"{says.Length(at.X)}, {says.Length(at.Y)}")))))
                + ".";
        }

        if (pan.Sides.Count > 0)
        {
            yield return says.Phrases.Say(Phrase.Pan.Walls,
                ("walls", string.Join("; ",
                pan.Sides.Select(side => $"{says.Side(side.Name)} {says.Length(side.Length)}"))));
        }

        if (pan.Circle is var (middle, across))
        {
            yield return says.Phrases.Say(Phrase.Pan.Circle, ("across", says.Length(across)), ("at", says.Place(middle)));
        }

        if (pan.Drain is { } drain)
        {
            yield return says.Phrases.Say(Phrase.Pan.Drain, ("at", says.Place(drain)));
        }

        if (pan is { Second: { } second, Ridge: var (from, to) })
        {
            yield return says.Phrases.Say(Phrase.Pan.Second, ("at", says.Place(second)), ("from", says.Place(from)),
                ("to", says.Place(to)));
        }
    }

    private static IEnumerable<string> Limits(PanReport pan, PanSays says)
    {
        foreach (var limits in pan.Limits)
        {
            yield return says.Phrases.Say(limits.Disputed ? Phrase.Pan.LimitDisputed : Phrase.Pan.Limit,
                ("measure", Sentence.Capital(says.Measure(limits))), ("limits", says.Limits(limits)),
                    ("sources", string.Join("; ", says.Sources(limits))));
        }

        if (pan.WithoutLimits.Count > 0)
        {
            yield return says.Phrases.Say(Phrase.Pan.Without, ("codes", says.Phrases.List(pan.WithoutLimits)));
        }
    }
}
