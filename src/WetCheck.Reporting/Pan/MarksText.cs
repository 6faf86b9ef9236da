using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The screed sheet on a screen: one line, one string to stretch.</summary>
public static class MarksText
{
    private const string Indent = "  ";

    /// <returns>Lines of at most 78, each ended by a line feed.</returns>
    public static string Of(FloorReport floor, Walk walk, string language, string when)
    {
        var phrases = new Phrases(walk.Book, language);
        var says = new MarkSays(new PanSays(phrases, walk.Book, walk.Job.Metric == true));
        var (marks, lines) = (floor.Marks, new List<string>(ScreenText.Head(Heading.Of(new Telling(walk, phrases), when))));
        if (marks.Plan is { } plan)
        {
            lines.AddRange(Block(Phrase.Marks.Title, says.Start(plan, marks.Window), phrases));
            lines.AddRange(Block(Phrase.Marks.AtWalls, says.Walls(plan), phrases));
            lines.AddRange(Block(Phrase.Marks.Ribs,
                plan.Ribs.Where(rib => rib.Kind != "plane").Select(says.Rib).Concat(says.Strings(plan)), phrases));
            lines.AddRange(Block(Phrase.Marks.Comes, says.Comes(plan), phrases));
            lines.AddRange(Block(Phrase.Marks.Below, plan.Below.SelectMany(layer => says.Below(layer, plan)), phrases));
        }
        else
        {
            lines.AddRange(Block(Phrase.Marks.Title, [says.None(marks)], phrases));
        }

        lines.AddRange(Block(Phrase.Pan.Missing, marks.Missing.Select(says.Pan.Missing), phrases));
        lines.Add("");
        lines.AddRange(Column.Wrap(phrases[Phrase.Marks.How]));
        lines.AddRange(Column.Wrap(phrases[Phrase.Close.Record]));
        return string.Join('\n', lines) + "\n";
    }

    internal static IEnumerable<string> Block(string heading, IEnumerable<string> said, Phrases phrases)
    {
        var lines = said.SelectMany(one => Column.Wrap(one, Indent)).ToList();
        return lines.Count == 0 ? [] : ["", phrases[heading], .. lines];
    }
}
