using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The heights of a floor on a screen.</summary>
public static class HeightsText
{
    private const string Indent = "  ";

    /// <returns>Lines of at most 78, each ended by a line feed.</returns>
    public static string Of(FloorReport floor, Walk walk, string language, string when)
    {
        var phrases = new Phrases(walk.Book, language);
        var says = new HeightSays(new PanSays(phrases, walk.Book, walk.Job.Metric == true));
        var heights = floor.Heights;
        var lines = new List<string>(ScreenText.Head(Heading.Of(new Telling(walk, phrases), when)));
        foreach (var group in heights.Lines.GroupBy(line => line.Group))
        {
            lines.AddRange(Block(phrases[$"heights.group-{group.Key.ToString().ToLowerInvariant()}"], Alike(group, says)));
        }

        lines.AddRange(Block(phrases[Phrase.Heights.Asked], heights.Asked.Select(says.Asked)));
        foreach (var stand in heights.Water)
        {
            lines.AddRange(Block(phrases[$"heights.water-{stand.Layer}-{(stand.InUse ? "use" : "test")}"], Water(stand, says)));
        }

        lines.AddRange(Block(phrases[Phrase.Pan.Missing], heights.Missing.Select(says.Pan.Missing)));
        lines.Add("");
        lines.AddRange(Column.Wrap(phrases[Phrase.Heights.How]));
        lines.AddRange(Column.Wrap(phrases[Phrase.Close.Record]));
        return string.Join('\n', lines) + "\n";
    }

    /// <summary>What is the same at several walls is one line.</summary>
    private static IEnumerable<string> Alike(IEnumerable<HeightLine> group, HeightSays says) => group
        .GroupBy(line => (line.Key, Says: says.Line(line)))
        .Select(alike =>
            says.Pan.Phrases.Say(Phrase.Heights.Line,
            ("what", says.Name(alike.Key.Key, [.. alike.Select(line => line.Place)])), ("height", alike.Key.Says)));

    private static IEnumerable<string> Water(WaterStand stand, HeightSays says)
    {
        for (var at = 0; at < Math.Min(2, stand.Ways.Count); at++)
        {
            yield return says.Way(at == 0 ? Phrase.Heights.FirstOut : Phrase.Heights.SecondOut, stand.Ways[at], stand.Datum);
        }

        yield return says.Pan.Phrases[stand.Ways.Count == 0 ? Phrase.Heights.NoWay : stand.AtTheEntry switch
        {
            Tri.Yes => Phrase.Heights.AtEntry,
            Tri.No => Phrase.Heights.NotAtEntry,
            _ => Phrase.Heights.EntryOpen,
        }];
        if (stand.Open.Count > 0)
        {
            yield return says.Pan.Phrases.Say(Phrase.Heights.Open, ("ways", string.Join("; ", stand.Open.Select(says.Way))));
        }

        if (stand.Unseen.Count > 0)
        {
            yield return says.Pan.Phrases.Say(Phrase.Heights.Unseen,
                ("kinds", says.Pan.Phrases.List([.. stand.Unseen.Select(says.Kinds)])));
        }
    }

    private static IEnumerable<string> Block(string heading, IEnumerable<string> said)
    {
        var lines = said.SelectMany(one => Column.Wrap(one, Indent)).ToList();
        return lines.Count == 0 ? [] : ["", heading, .. lines];
    }
}
