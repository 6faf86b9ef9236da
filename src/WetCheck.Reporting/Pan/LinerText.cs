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
        lines.AddRange(MarksText.Block("cut.sheet", liner.Cut is { } sheet ? Sheet(sheet, says) : [phrases[floor.Heights.Section.HasLiner ? "cut.not-yet" : "cut.none-here"]], phrases));
        if (liner.Cut is { } cut)
        {
            lines.AddRange(MarksText.Block("cut.rolls", Rolls(cut, says), phrases));
            lines.AddRange(MarksText.Block("cut.corners", Corners(cut, says), phrases));
        }

        lines.AddRange(MarksText.Block("pan.missing", liner.Missing.Select(says.Pan.Missing), phrases));
        lines.Add("");
        lines.AddRange(Column.Wrap(phrases["cut.how"]));
        lines.AddRange(Column.Wrap(phrases["close.record"]));
        return string.Join('\n', lines) + "\n";
    }

    internal static IEnumerable<string> Sheet(LinerCut cut, DrawSays says)
    {
        var (pan, phrases) = (says.Pan, says.Phrases);
        yield return phrases.Say("cut.size", ("along", pan.Length(cut.Size.Along)), ("across", pan.Length(cut.Size.Across)));
        yield return phrases[cut.IsToFinished ? "cut.to-finished" : "cut.to-studs"];
        foreach (var flap in cut.Flaps)
        {
            yield return flap.Folds is [var up, var over]
                ? phrases.Say("cut.curb", ("side", says.Wall(flap.Side)), ("length", pan.Length(flap.Length)), ("up", pan.Length(up)), ("over", pan.Length(over - up)), ("down", pan.Length(flap.Beyond - over)))
                : phrases.Say("cut.flap", ("side", says.Wall(flap.Side)), ("length", pan.Length(flap.Length)), ("up", pan.Length(flap.Beyond)));
        }
    }

    internal static IEnumerable<string> Corners(LinerCut cut, DrawSays says)
    {
        var (pan, phrases) = (says.Pan, says.Phrases);
        foreach (var corner in cut.Corners)
        {
            var at = corner.Corner.Length > 0 ? Sentence.Capital(pan.Side(corner.Corner)) : Sentence.Capital(phrases.Say("pan.corner", ("at", pan.Place(corner.At))));
            yield return phrases.Say(corner.Covers == 0 ? "cut.patch" : corner.AtCurb ? "cut.pleat-at-curb" : "cut.pleat", ("corner", at), ("covers", pan.Length(corner.Covers)));
        }
    }

    private static IEnumerable<string> Rolls(LinerCut cut, DrawSays says)
    {
        foreach (var roll in cut.Rolls)
        {
            yield return says.Phrases.Say(roll.AlongEntry ? "cut.roll-along" : "cut.roll-across", ("roll", says.Size(roll.Width)), ("length", says.Size(roll.Length)), ("waste", Math.Round(roll.Waste * 100).ToString(CultureInfo.InvariantCulture)));
        }

        if (cut.NoRoll.Count > 0)
        {
            yield return says.Phrases.Say("cut.no-roll", ("rolls", says.Phrases.List([.. cut.NoRoll.Select(says.Size)])));
        }
    }
}
