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
        lines.AddRange(Block("pan.floor", Floor(pan, says), says));
        lines.AddRange(Block("pan.missing", pan.Missing.Select(says.Missing), says));
        lines.AddRange(Block("pan.in-force", Limits(pan, says), says));
        foreach (var alike in pan.Cases.GroupBy(one => (one.Part, one.Limits.AlongFolds, one.Taken)))
        {
            lines.Add("");
            lines.AddRange(PanCaseText.Of([.. alike], says));
        }

        lines.Add("");
        lines.AddRange(Column.Wrap(phrases["pan.how"]));
        lines.AddRange(Column.Wrap(phrases["close.record"]));
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
            yield return Sentence.Capital(says.Phrases.Say("value.outline", ("corners", string.Join("; ", pan.Outline.Select(at => $"{says.Length(at.X)}, {says.Length(at.Y)}"))))) + ".";
        }

        if (pan.Sides.Count > 0)
        {
            yield return says.Phrases.Say("pan.walls", ("walls", string.Join("; ", pan.Sides.Select(side => $"{says.Side(side.Name)} {says.Length(side.Length)}"))));
        }

        if (pan.Circle is var (middle, across))
        {
            yield return says.Phrases.Say("pan.circle", ("across", says.Length(across)), ("at", says.Place(middle)));
        }

        if (pan.Drain is { } drain)
        {
            yield return says.Phrases.Say("pan.drain", ("at", says.Place(drain)));
        }

        if (pan is { Second: { } second, Ridge: var (from, to) })
        {
            yield return says.Phrases.Say("pan.second", ("at", says.Place(second)), ("from", says.Place(from)), ("to", says.Place(to)));
        }
    }

    private static IEnumerable<string> Limits(PanReport pan, PanSays says)
    {
        foreach (var limits in pan.Limits)
        {
            yield return says.Phrases.Say(limits.Disputed ? "pan.limit-disputed" : "pan.limit",
                ("measure", Sentence.Capital(says.Measure(limits))), ("limits", says.Limits(limits)), ("sources", string.Join("; ", says.Sources(limits))));
        }

        if (pan.WithoutLimits.Count > 0)
        {
            yield return says.Phrases.Say("pan.without", ("codes", says.Phrases.List(pan.WithoutLimits)));
        }
    }
}
