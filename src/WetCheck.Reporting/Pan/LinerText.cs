using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The cut sheet of a liner on a screen, in the order in which one works: cut, fold, corners, pieces.</summary>
public static class LinerText
{
    /// <returns>Lines of at most 78, each ended by a line feed.</returns>
    public static string Of(FloorReport floor, Walk walk, string language, string when)
    {
        var phrases = new Phrases(walk.Book, language);
        var (liner, says) = (floor.Liner, new DrawSays(new PanSays(phrases, walk.Book, walk.Job.Metric == true)));
        var lines = new List<string>(ScreenText.Head(Heading.Of(new Telling(walk, phrases), when)));
        lines.AddRange(MarksText.Block(Phrase.Cut.Sheet,
            liner.Cut is { } sheet ? Sheet(sheet, says)
            : [phrases[floor.Heights.Section.HasLiner ? Phrase.Cut.NotYet : Phrase.Cut.NoneHere]], phrases));
        if (liner.Cut is { } cut)
        {
            lines.AddRange(MarksText.Block(Phrase.Cut.Rolls, Rolls(cut, says), phrases));
            lines.AddRange(MarksText.Block(Phrase.Cut.Corners, Corners(cut, says), phrases));
        }

        lines.AddRange(MarksText.Block(Phrase.Pan.Missing, liner.Missing.Select(says.Pan.Missing), phrases));
        lines.Add("");
        lines.AddRange(Column.Wrap(phrases[Phrase.Cut.How]));
        lines.AddRange(Column.Wrap(phrases[Phrase.Close.Record]));
        return string.Join('\n', lines) + "\n";
    }

    internal static IEnumerable<string> Sheet(LinerCut cut, DrawSays says)
    {
        var (pan, phrases) = (says.Pan, says.Phrases);
        yield return phrases.Say(Phrase.Cut.Size, ("along", pan.Length(cut.Size.Along)), ("across", pan.Length(cut.Size.Across)));
        yield return phrases[cut.IsToFinished ? Phrase.Cut.ToFinished : Phrase.Cut.ToStuds];
        foreach (var flap in cut.Flaps)
        {
            yield return flap.Folds is [var up, var over]
                ? phrases.Say(Phrase.Cut.Curb, ("side", says.Wall(flap.Side)), ("length", pan.Length(flap.Length)),
                    ("up", pan.Length(up)), ("over", pan.Length(over - up)), ("down", pan.Length(flap.Beyond - over)))
                : phrases.Say(Phrase.Cut.Flap, ("side", says.Wall(flap.Side)), ("length", pan.Length(flap.Length)),
                    ("up", pan.Length(flap.Beyond)));
        }
    }

    internal static IEnumerable<string> Corners(LinerCut cut, DrawSays says)
    {
        var (pan, phrases) = (says.Pan, says.Phrases);
        foreach (var corner in cut.Corners)
        {
            var at = corner.Corner.Length > 0 ? Sentence.Capital(pan.Side(corner.Corner))
                : Sentence.Capital(phrases.Say(Phrase.Pan.Corner, ("at", pan.Place(corner.At))));
            yield return phrases.Say(corner.Covers == 0 ? Phrase.Cut.Patch : corner.AtCurb ? Phrase.Cut.PleatAtCurb
                : Phrase.Cut.Pleat, ("corner", at), ("covers", pan.Length(corner.Covers)));
        }
    }

    private static IEnumerable<string> Rolls(LinerCut cut, DrawSays says)
    {
        foreach (var roll in cut.Rolls)
        {
            yield return says.Phrases.Say(roll.AlongEntry ? Phrase.Cut.RollAlong : Phrase.Cut.RollAcross,
                ("roll", says.Size(roll.Width)), ("length", says.Size(roll.Length)),
                ("waste", Math.Round(roll.Waste * 100).ToString(CultureInfo.InvariantCulture)));
        }

        if (cut.NoRoll.Count > 0)
        {
            yield return says.Phrases.Say(Phrase.Cut.NoRoll, ("rolls", says.Phrases.List([.. cut.NoRoll.Select(says.Size)])));
        }
    }
}
