using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads a floor by its corners, or as a rectangle that lacks one corner.</summary>
internal static class Outlines
{
    public const string Example = "0,0 60,0 60,36 0,36";

    private static readonly (string Word, bool IsClipped)[] s_cuts = [(" less ", false), (" clipped ", true)];

    public static Taken<ReadingValue.OfOutline> Read(string text, Unit? lone)
    {
        foreach (var (word, isClipped) in s_cuts)
        {
            if (text.IndexOf(word, StringComparison.OrdinalIgnoreCase) is var at and > 0)
            {
                return CutFloor.Read(text, at, at + word.Length, isClipped, lone);
            }
        }

        return text.Contains(',', StringComparison.Ordinal) ? ByCorners(text, lone) : CutFloor.Whole(text, lone);
    }

    private static Taken<ReadingValue.OfOutline> ByCorners(string text, Unit? lone)
    {
        var corners = new List<(Rational, Rational)>();
        var starts = new List<int>();
        Unit? unit = null;
        foreach (var (start, typed) in Pieces(text))
        {
            if (typed.Count(character => character == ',') != 1)
            {
                return Faults.NoCorner(typed, start);
            }

            if (corners.Count > Limits.Corners)
            {
                return Faults.TooManyCorners(start);
            }

            var point = Notation.ReadPoint(typed, lone);
            if (!point.IsRead)
            {
                return point.Fault with { Offset = point.Fault.Offset + start };
            }

            corners.Add((point.Value.FromLeft, point.Value.FromEntry));
            starts.Add(start);
            unit ??= point.Value.Unit;
        }

        // The first may be said again at the end.
        if (corners.Count > 3 && corners[0] == corners[^1])
        {
            corners.RemoveAt(corners.Count - 1);
        }

        return OutlineChecks.Fault(corners, starts) is { } fault ? fault
            : new ReadingValue.OfOutline(new CornerPoints(corners), unit ?? Unit.Inch);
    }

    /// <summary>Parted by semicolons or, where there are none, by blanks that stand before a figure and not after a comma.</summary>
    private static IEnumerable<(int Start, string Typed)> Pieces(string text)
    {
        var bySemicolons = text.Contains(';', StringComparison.Ordinal);
        var start = 0;
        for (var at = 0; at <= text.Length; at++)
        {
            var ends = at == text.Length || (bySemicolons ? text[at] == ';' : IsBetween(text, at));
            if (ends)
            {
                var typed = text[start..at];
                if (typed.Trim().Length > 0)
                {
                    yield return (start + typed.Length - typed.TrimStart().Length, typed.Trim());
                }

                start = at + 1;
            }
        }
    }

    private static bool IsBetween(string text, int at)
    {
        if (!char.IsWhiteSpace(text[at]))
        {
            return false;
        }

        var (before, after) = (text[..at].TrimEnd(), text[at..].TrimStart());
        return before.Length > 0 && before[^1] != ',' && after.Length > 0 && !char.IsLetter(after[0]) && after[0] != ',';
    }
}
