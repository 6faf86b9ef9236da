using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>A rectangle that lacks one corner: a piece cut out square, or cut off slanting.</summary>
internal static class CutFloor
{
    private const string At = " at ";

    /// <summary>The rectangle alone.</summary>
    public static Taken<ReadingValue.OfOutline> Whole(string text, Unit? lone)
    {
        var size = Size(text, 0, lone);
        return size.IsRead
            ? Floor(size.Value,
            [(0, 0), (size.Value.Width, 0), (size.Value.Width, size.Value.Depth), (0, size.Value.Depth)]) : size.Fault;
    }

    /// <param name="before">Where the rectangle ends.</param>
    /// <param name="after">Where the piece begins.</param>
    public static Taken<ReadingValue.OfOutline> Read(string text, int before, int after, bool isClipped, Unit? lone)
    {
        var where = text.IndexOf(At, after, StringComparison.OrdinalIgnoreCase);
        if (where < 0)
        {
            return Faults.WhichCorner(text[after..].Trim(), after);
        }

        var (whole, piece) = (Size(text[..before], 0, lone), Size(text[after..where], after, lone));
        if (!whole.IsRead || !piece.IsRead)
        {
            return (whole.Fault ?? piece.Fault)!;
        }

        if (piece.Value.Width >= whole.Value.Width || piece.Value.Depth >= whole.Value.Depth)
        {
            return Faults.CutTooLarge(after);
        }

        var corner = text[(where + At.Length)..];
        var (width, depth) = (whole.Value.Width, whole.Value.Depth);
        return CornerOf(corner) is var (isRight, isBack)
            ? Floor(whole.Value, Cut(width, depth, piece.Value, isRight, isBack, isClipped))
            : Faults.WhichCorner(corner.Trim(), where + At.Length);
    }

    /// <summary>Worked out at the corner right-back, then turned to where it is.</summary>
    private static IEnumerable<(Rational, Rational)> Cut(Rational width, Rational depth, ReadingValue.OfSize piece,
        bool isRight, bool isBack, bool isClipped)
    {
        var (x, y) = (width - piece.Width, depth - piece.Depth);
        (Rational X, Rational Y)[] corners = isClipped
            ? [(0, 0), (width, 0), (width, y), (x, depth), (0, depth)]
            : [(0, 0), (width, 0), (width, y), (x, y), (x, depth), (0, depth)];
        return corners.Select(corner => (isRight ? corner.X : width - corner.X, isBack ? corner.Y : depth - corner.Y));
    }

    private static Taken<ReadingValue.OfOutline> Floor(ReadingValue.OfSize size, IEnumerable<(Rational, Rational)> corners) =>
        new ReadingValue.OfOutline(new CornerPoints([.. corners]), size.Unit);

    private static Taken<ReadingValue.OfSize> Size(string text, int start, Unit? lone)
    {
        var size = Notation.ReadSize(text, lone);
        return !size.IsRead ? size.Fault with { Offset = size.Fault.Offset + start }
            : size.Value.Between is Between.ToStuds or Between.Overall || size.Value.Floor is not null ? Faults.FinishedFaces(start)
            : size;
    }

    private static (bool IsRight, bool IsBack)? CornerOf(string typed) => Names.Fold(typed.Replace('-', ' ')) switch
    {
        "left back" or "back left" or "bc" => (false, true),
        "right back" or "back right" or "cd" => (true, true),
        "left jamb" or "left entry" or "entry left" or "ab" => (false, false),
        "right jamb" or "right entry" or "entry right" or "da" => (true, false),
        _ => null,
    };
}
