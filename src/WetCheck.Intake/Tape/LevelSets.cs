using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads levels of a floor: <c>0,0 3/4  30,0 3/4  30,18 0</c>, each a place and how high it is over one level
/// line; <c>down</c> in front:
/// how far below.</summary>
internal static class LevelSets
{
    public const string Example = "0,0 3/4  60,0 3/4  30,18 0";

    /// <summary>A text longer than this belongs in a file of its own.</summary>
    public const int LongestText = 4000;

    public static Taken<ReadingValue.OfLevels> Read(string text, Unit? lone)
    {
        var words = Words(text);
        var down = words.Count > 0 && Names.Same(words[0].Typed, "down");
        var points = new List<(Rational, Rational, Rational)>();
        Unit? unit = null;
        for (var at = down ? 1 : 0; at < words.Count;)
        {
            var (start, place) = words[at++];
            if (!place.Contains(',', StringComparison.Ordinal))
            {
                return Faults.NoLevel(place, start);
            }

            // A blank may stand behind the comma.
            if (place[^1] == ',' && at < words.Count)
            {
                place = text[start..(words[at].Start + words[at++].Typed.Length)];
            }

            var first = at;
            while (at < words.Count && !words[at].Typed.Contains(',', StringComparison.Ordinal))
            {
                at++;
            }

            if (at == first)
            {
                return Faults.NoLevel(place, start);
            }

            var point = Notation.ReadPoint(place, lone);
            var height = Height(text[words[first].Start..(words[at - 1].Start + words[at - 1].Typed.Length)], lone);
            if (!height.IsRead && at - first > 1)
            {
                // Most likely the comma of the next place is missing.
                return Faults.NoLevel(words[first + 1].Typed, words[first + 1].Start);
            }

            if (!point.IsRead || !height.IsRead)
            {
                return !point.IsRead ? point.Fault with { Offset = point.Fault.Offset + start }
                    : height.Fault! with { Offset = height.Fault!.Offset + words[first].Start };
            }

            points.Add((point.Value.FromLeft, point.Value.FromEntry, down ? -height.Value.Inches : height.Value.Inches));
            unit ??= height.Value.Unit;
        }

        return points.Count == 0 ? Faults.NoLevel(text.Trim(), 0) : new ReadingValue.OfLevels(new LevelSet(points), unit ?? Unit.Inch);
    }

    /// <summary>A length that may lie below the line: <c>-1/4</c>.</summary>
    public static Taken<Level> Height(string typed, Unit? lone) =>
        Signed(typed, lone) is { IsRead: true, Value.Inches: var inches } && inches.Abs > Limits.LevelInches
        ? Faults.LevelTooFar(typed, 0)
        : Signed(typed, lone);

    /// <summary>How far from a wall: <c>42-1/2</c>.</summary>
    public static Taken<Level> Place(string typed, Unit? lone) =>
        Signed(typed, lone) is { IsRead: true, Value.Inches: var inches } && inches.Abs > Limits.SideInches
        ? Faults.SideTooLong(typed, 0)
        : Signed(typed, lone);

    private static Taken<Level> Signed(string typed, Unit? lone)
    {
        var sign = typed.Length > 0 && typed[0] is '-' or '−' or '+' ? 1 : 0;
        var read = Notation.ReadLength(typed[sign..], lone);
        return !read.IsRead ? read.Fault with { Offset = read.Fault.Offset + sign }
            : read.Value is { Exact: false, Amount: { IsPoint: true, Lo: { } inches } }
                ? new Level(sign == 1 && typed[0] != '+' ? -inches : inches, read.Value.Unit)
            : Faults.NotOneNumber();
    }

    /// <summary>Parted by blanks or semicolons.</summary>
    private static List<(int Start, string Typed)> Words(string text)
    {
        var words = new List<(int, string)>();
        for (var at = 0; at < text.Length; at++)
        {
            var start = at;
            while (at < text.Length && !char.IsWhiteSpace(text[at]) && text[at] != ';')
            {
                at++;
            }

            if (at > start)
            {
                words.Add((start, text[start..at]));
            }
        }

        return words;
    }

    /// <summary>One height, in the unit it was typed in.</summary>
    public sealed record Level(Rational Inches, Unit Unit);
}
