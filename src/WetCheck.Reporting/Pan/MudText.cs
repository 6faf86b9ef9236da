using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The mortar of a floor on a screen: volume, weight, bags, and what it would be otherwise.</summary>
public static class MudText
{
    /// <returns>Lines of at most 78, each ended by a line feed.</returns>
    public static string Of(FloorReport floor, Walk walk, string language, string when)
    {
        var phrases = new Phrases(walk.Book, language);
        var (mud, says) = (floor.Mud, new MudSays(new PanSays(phrases, walk.Book, walk.Job.Metric == true), floor.Mud));
        var lines = new List<string>(ScreenText.Head(Heading.Of(new Telling(walk, phrases), when)));
        var built = mud.Ways.Where(way => way.As == mud.Built).ToList();
        lines.AddRange(MarksText.Block(Phrase.Mud.Title,
            mud.Area is null ? [phrases[mud.Missing.Count > 0 ? Phrase.Mud.NotYet : Phrase.Mud.NoneHere]]
            : [.. says.Floor(), .. built.SelectMany(says.Layers)], phrases));
        lines.AddRange(MarksText.Block(Phrase.Mud.Bags, built.Where(way => way.Layers.Count > 0).SelectMany(says.Bags), phrases));
        lines.AddRange(MarksText.Block(Phrase.Mud.Mixes, built.Any(way => way.Layers.Count > 0) ? says.Mixes() : [], phrases));
        lines.AddRange(MarksText.Block(Phrase.Mud.Instead, mud.Ways.Where(way => way.As != mud.Built).Select(says.Instead), phrases));
        lines.AddRange(MarksText.Block(Phrase.Mud.Water, says.Water(), phrases));
        lines.AddRange(MarksText.Block(Phrase.Mud.Sources, mud.Area is null ? [] : says.Sources(), phrases));
        lines.AddRange(MarksText.Block(Phrase.Pan.Missing, mud.Missing.Select(says.Pan.Missing), phrases));
        lines.Add("");
        lines.AddRange(Column.Wrap(phrases[Phrase.Mud.How]));
        lines.AddRange(Column.Wrap(phrases[Phrase.Close.Record]));
        return string.Join('\n', lines) + "\n";
    }
}
