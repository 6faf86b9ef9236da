using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The level readings of a floor on a screen.</summary>
public static class LevelsText
{
    private const string Indent = "  ";

    /// <returns>Lines of at most 78, each ended by a line feed.</returns>
    public static string Of(FloorReport floor, Walk walk, string language, string when)
    {
        var phrases = new Phrases(walk.Book, language);
        var says = new LevelsSays(new PanSays(phrases, walk.Book, walk.Job.Metric == true));
        var levels = floor.Levels;
        var isTold = levels.Readings > 0 && floor.Falls.Outline.Count > 0;
        var lines = new List<string>(ScreenText.Head(Heading.Of(new Telling(walk, phrases), when)));
        lines.AddRange(Block(Phrase.Levels.Readings, levels.Readings > 0 ? [says.Count(levels)] : []));
        lines.AddRange(Block(Phrase.Pan.Missing, levels.Missing.Select(says.Pan.Missing)));
        lines.AddRange(Block(Phrase.Levels.Again, levels.Again.Select(says.Again)));
        lines.AddRange(Block(Phrase.Levels.Planes,
            levels.Planes.Count > 0 ? says.Planes(levels.Planes) : isTold ? [phrases[Phrase.Levels.NoPlanes]] : []));
        lines.AddRange(Block(Phrase.Levels.Ponds, Ponds(levels, says, isTold)));
        lines.AddRange(Block(Phrase.Levels.FirstOut,
            levels.FirstOut is var (edge, height)
            ? [phrases.Say(Phrase.Levels.Edge, ("at", says.Pan.Place(edge)), ("height", says.Pan.Length(height)))]
            : []));
        lines.AddRange(Block(Phrase.Levels.Bumps, levels.Bumps.Select(says.Bump)));
        lines.AddRange(Block(Phrase.Levels.Flats, levels.Flats.Select(says.Flat)));
        lines.Add("");
        lines.AddRange(Column.Wrap(phrases[Phrase.Levels.How]));
        lines.AddRange(Column.Wrap(phrases[Phrase.Close.Record]));
        return string.Join('\n', lines) + "\n";

        IEnumerable<string> Block(string heading, IEnumerable<string> said)
        {
            var all = said.SelectMany(one => Column.Wrap(one, Indent)).ToList();
            return all.Count == 0 ? [] : ["", phrases[heading], .. all];
        }
    }

    /// <summary>None shows only where the drain was read; and what can hide is said beside it.</summary>
    private static IEnumerable<string> Ponds(LevelReport levels, LevelsSays says, bool isTold)
    {
        var isFlooded =
            isTold && levels.Missing.All(missing =>
            missing.Key is not ("no-level-at-drain" or "no-drain" or "drain-outside" or "drain-clash"));
        var said = levels.Ponds.Count == 0 && isFlooded ? [says.Pan.Phrases[Phrase.Levels.NoPond]] : levels.Ponds.Select(says.Pond);
        return says.Hides(levels) is { } hides ? said.Append(hides) : said;
    }
}
