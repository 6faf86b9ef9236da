using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>
/// A floor seen from above, with its walls named and lettered, its drain, and the entry at the bottom: what every plan
/// begins with.
/// </summary>
internal sealed class PlanBase
{
    private const double Inch = 25.4;
    private static readonly int[] s_scales = [8, 10, 12, 16, 20, 24, 32, 40, 48, 64, 96];
    private readonly FloorPlan _floor;
    private readonly double _left;
    private readonly double _back;

    /// <param name="most">Millimetres that the longer side may take.</param>
    public PlanBase(FloorPlan floor, DrawSays says, double most)
    {
        (_floor, Says) = (floor, says);
        (_left, _back) = (floor.Outline.Min(at => at.X), floor.Outline.Max(at => at.Y));
        var longest = Math.Max(floor.Outline.Max(at => at.X) - _left, _back - floor.Outline.Min(at => at.Y));
        Scale = s_scales.FirstOrDefault(scale => longest * Inch / scale <= most, s_scales[^1]);
        (Right, Bottom) = (At(new Spot(floor.Outline.Max(at => at.X), 0)).X, At(new Spot(0, floor.Outline.Min(at => at.Y))).Y);
    }

    public DrawSays Says { get; }

    public Canvas Canvas { get; } = new();

    /// <summary>One inch on the paper is so many of the floor.</summary>
    public int Scale { get; }

    public double Right { get; }

    public double Bottom { get; }

    /// <summary>The left wall stands at 0, the back wall at 0.</summary>
    public Mm At(Spot spot) => new((spot.X - _left) * Inch / Scale, (_back - spot.Y) * Inch / Scale);

    public void Walls()
    {
        foreach (var side in _floor.Sides)
        {
            Canvas.Line(At(side.From), At(side.To), IsEntry(side.Name) ? Pen.Seen : Pen.Cut);
        }
    }

    public void Drain()
    {
        if (_floor.Grate is { } grate)
        {
            if (grate.Radius > 0)
            {
                Canvas.Circle(At(grate.Corners[0]), grate.Radius * Inch / Scale, Pen.Seen);
            }
            else
            {
                Canvas.Ring([.. grate.Corners.Select(At)], Pen.Seen);
            }
        }

        if (_floor.Drain is { } drain)
        {
            Canvas.Circle(At(drain), 0.8, Pen.Thin, isFilled: true);
        }
    }

    /// <summary>Outside of each wall; the entry has its arrow.</summary>
    public void Names()
    {
        foreach (var side in _floor.Sides)
        {
            var (from, to) = (At(side.From), At(side.To));
            var (middle, outward) = ((from + to) * 0.5, (to - from).Unit.Turned);
            var text = Says.Wall(side.Name);
            var room = Lettering.Width(text, Lettering.Plain, isBold: false) < (to - from).Length;
            if (IsEntry(side.Name) && side == _floor.Sides[0])
            {
                Canvas.Arrow(middle + (outward * 12), middle + (outward * 2.5), Pen.Seen);
                Canvas.Text(Says.Entry, middle + (outward * 15), isBold: true);
            }
            else if (room && (Math.Abs(outward.X) < 1e-6 || Math.Abs(outward.Y) < 1e-6)
                && Canvas.IsFree(text, middle + (outward * 4), Math.Abs(outward.X) > 0.5))
            {
                Canvas.Text(text, middle + (outward * 4), Math.Abs(outward.X) > 0.5);
            }
            else
            {
                Canvas.Label(text, middle + (outward * 2), toward: outward);
            }
        }
    }

    /// <summary>Two inches on the paper, or fifty millimetres, with what to think if they aren't; below all that was drawn.</summary>
    public void Bar() => ScaleBar.Draw(Canvas, Says);

    /// <summary>In place of the bar: the floor's size is not known.</summary>
    public void NotToScale() => Canvas.TextFrom(Says.Phrases[Phrase.Draw.NotToScale], new Mm(Canvas.Extent.Left, Canvas.Extent.Bottom + 4));

    public static bool IsEntry(string side) => side == "entry" || side.StartsWith("entry-", StringComparison.Ordinal);
}
