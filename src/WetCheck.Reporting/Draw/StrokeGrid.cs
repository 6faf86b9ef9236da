namespace WetCheck.Reporting;

/// <summary>
/// The lines of a drawing by the squares of paper that they may touch, so that a label is held against those near it
/// only.
/// </summary>
internal sealed class StrokeGrid
{
    private const double Side = 5;

    private readonly Dictionary<(int, int), List<(Mm From, Mm To)>> _near = [];

    public void Add(Mm from, Mm to)
    {
        foreach (var square in Squares(Math.Min(from.X, to.X), Math.Min(from.Y, to.Y), Math.Max(from.X, to.X), Math.Max(from.Y, to.Y)))
        {
            (_near.TryGetValue(square, out var strokes) ? strokes : _near[square] = []).Add((from, to));
        }
    }

    public bool Meet(Box box)
    {
        foreach (var square in Squares(box.Left, box.Top, box.Right, box.Bottom))
        {
            if (_near.TryGetValue(square, out var strokes) && strokes.Exists(stroke => box.Meets(stroke.From, stroke.To)))
            {
                return true;
            }
        }

        return false;
    }

    private static IEnumerable<(int, int)> Squares(double left, double top, double right, double bottom)
    {
        for (var x = At(left); x <= At(right); x++)
        {
            for (var y = At(top); y <= At(bottom); y++)
            {
                yield return (x, y);
            }
        }
    }

    private static int At(double mm) => (int)Math.Floor(mm / Side);
}
