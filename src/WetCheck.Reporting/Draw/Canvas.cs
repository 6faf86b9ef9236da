using System.Text;

namespace WetCheck.Reporting;

/// <summary>
/// A drawing on paper, black only. Lines and texts that have their place come first; labels then find a place where they lie on no line and
/// on no other text, as near as they can to what they name, with a leader where that is far.
/// </summary>
internal sealed class Canvas
{
    private const double Air = 0.7;
    private readonly StringBuilder _lines = new();
    private readonly StringBuilder _texts = new();
    private readonly StrokeGrid _strokes = new();
    private readonly List<Box> _boxes = [];
    private readonly List<Box> _kept = [];
    private readonly List<Wanted> _wanted = [];
    private readonly HashSet<Hatch> _hatches = [];

    /// <summary>Labels that found no place near what they name.</summary>
    public int Lost { get; private set; }

    /// <summary>Of all that was drawn, with a little air.</summary>
    public Box Extent { get; private set; } =
        new(double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);

    public void Line(Mm from, Mm to, Pen pen, Dash dash = Dash.Whole)
    {
        _lines.Append(SvgText.Line(from, to, pen, dash));
        Stroke(from, to);
    }

    public void Ring(IReadOnlyList<Mm> corners, Pen pen, Hatch? hatch = null, Dash dash = Dash.Whole)
    {
        _lines.Append(SvgText.Ring(corners, pen, hatch, dash));
        for (var at = 0; at < corners.Count; at++)
        {
            Stroke(corners[at], corners[(at + 1) % corners.Count]);
        }

        if (hatch is { } filled)
        {
            _hatches.Add(filled);
            Keep(new Box(corners.Min(one => one.X), corners.Min(one => one.Y), corners.Max(one => one.X), corners.Max(one => one.Y)));
        }
    }

    public void Circle(Mm middle, double radius, Pen pen, bool isFilled = false)
    {
        _lines.Append(SvgText.Circle(middle, radius, pen, isFilled));
        for (var at = 0; at < 12; at++)
        {
            Stroke(Around(at), Around(at + 1));
        }

        Mm Around(int at) => middle + (new Mm(Math.Cos(at * Math.PI / 6), Math.Sin(at * Math.PI / 6)) * radius);
    }

    /// <summary>A line with a head at its end.</summary>
    public void Arrow(Mm from, Mm to, Pen pen)
    {
        var back = (from - to).Unit;
        Line(from, to, pen);
        Line(to, to + (back * 2.4) + (back.Turned * 0.9), pen);
        Line(to, to + (back * 2.4) - (back.Turned * 0.9), pen);
    }

    /// <summary>No label lies here.</summary>
    public void Keep(Box free) => _kept.Add(free);

    /// <summary>A text that has its place; read from the bottom, or upright from the right edge.</summary>
    public void Text(string text, Mm middle, bool isUpright = false, bool isBold = false, double size = Lettering.Plain)
    {
        var (width, height) = (Lettering.Width(text, size, isBold), size);
        Place(text, isUpright ? Box.Around(middle, height, width) : Box.Around(middle, width, height), isUpright, isBold, size);
    }

    /// <summary>A text that begins at a place.</summary>
    public void TextFrom(string text, Mm left)
    {
        var box = new Box(left.X, left.Y - (Lettering.Plain / 2),
            left.X + Lettering.Width(text, Lettering.Plain, isBold: false), left.Y + (Lettering.Plain / 2));
        _texts.Append(SvgText.Begun(text, left, Lettering.Plain));
        _boxes.Add(box);
        Grow(box);
    }

    /// <summary>Whether a text fits between two places without touching what stands there.</summary>
    public bool IsFree(string text, Mm middle, bool isUpright = false, double size = Lettering.Plain)
    {
        var (width, height) = (Lettering.Width(text, size, isBold: false), size);
        return IsFree(isUpright ? Box.Around(middle, height, width) : Box.Around(middle, width, height));
    }

    /// <summary>A text that finds its place near what it names.</summary>
    /// <param name="toward">Only on this side of it.</param>
    public void Label(string text, Mm near, bool isBold = false, double size = Lettering.Plain, Mm? toward = null) =>
        _wanted.Add(new Wanted(text, near, isBold, size, toward));

    /// <summary>All of it; nothing can be added after.</summary>
    /// <param name="name">Of this drawing on its page, for what refers to it.</param>
    /// <param name="told">Its lines in words, for who can't see it.</param>
    /// <param name="below">What is drawn below all else.</param>
    /// <param name="isAlone">A file of its own; else it stands in a page.</param>
    public string Svg(string name, string title, IReadOnlyList<string> told, Action? below = null, bool isAlone = true)
    {
        foreach (var label in _wanted)
        {
            Find(label);
        }

        below?.Invoke();

        var sheet = Extent.Wider(1.5);
        return SvgText.Whole(name, title, told, sheet, _hatches, _lines.ToString(), _texts.ToString(), isAlone, Lost);
    }

    /// <summary>As near as it can on the side that is wanted; else on any side.</summary>
    private void Find(Wanted label)
    {
        // Where another text covers the place itself, no leader can start there: one a little beside it does.
        var beside =
            Enumerable.Range(1, 3)
            .SelectMany(far => Enumerable.Range(0, 8)
            .Select(turn => new Mm(Math.Cos(turn * Math.PI / 4), Math.Sin(turn * Math.PI / 4)) * (3 * far)));
        if (!Finds(label) && !(label.Toward is not null && Finds(label with { Toward = null }))
            && !beside.Any(off => Finds(label with { Toward = null, Near = label.Near + off })))
        {
            // Nobody could tell what it names: it is said in words, and a test looks for it.
            Lost++;
            var (wide, high) = (Lettering.Width(label.Text, label.Size, label.IsBold), label.Size);
            Place(label.Text, Box.Around(new Mm(Extent.Left + (wide / 2), Extent.Bottom + high), wide, high),
                isUpright: false, label.IsBold, label.Size);
        }
    }

    private bool Finds(Wanted label)
    {
        var (width, height) = (Lettering.Width(label.Text, label.Size, label.IsBold), label.Size);
        foreach (var far in new[] { 0, 1, 2.5, 4, 6, 8, 11, 14, 18, 23, 29, 36, 45, 56, 70, 88, 110 })
        {
            foreach (var way in label.Ways())
            {
                var middle = label.Near + new Mm(way.X * (far + (width / 2)), way.Y * (far + (height / 2)));
                var box = Box.Around(far == 0 ? label.Near : middle, width, height);
                if (IsFree(box) && (far <= 6 || Leads(label.Near, box)))
                {
                    if (far > 6)
                    {
                        Line(label.Near, End(label.Near, box), Pen.Thin);
                    }

                    Place(label.Text, box, isUpright: false, label.IsBold, label.Size);
                    return true;
                }
            }
        }

        return false;
    }

    private bool Leads(Mm from, Box to) => !_boxes.Exists(box => box.Wider(Air / 2).Meets(from, End(from, to)));

    /// <summary>The middle of the side of the box that looks to a place.</summary>
    private static Mm End(Mm from, Box to)
    {
        var way = from - to.Middle;
        var (wide, high) = ((to.Right - to.Left) / 2, (to.Bottom - to.Top) / 2);
        return Math.Abs(way.X) * high > Math.Abs(way.Y) * wide
            ? to.Middle + new Mm(Math.Sign(way.X) * (wide + (Air / 2)), 0)
            : to.Middle + new Mm(0, Math.Sign(way.Y) * (high + (Air / 2)));
    }

    private bool IsFree(Box box)
    {
        var wider = box.Wider(Air);
        return !_boxes.Exists(wider.Meets) && !_kept.Exists(box.Meets) && !_strokes.Meet(wider);
    }

    private void Place(string text, Box box, bool isUpright, bool isBold, double size)
    {
        _texts.Append(SvgText.Text(text, box.Middle, isUpright, isBold, size));
        _boxes.Add(box);
        Grow(box);
    }

    private void Stroke(Mm from, Mm to)
    {
        _strokes.Add(from, to);
        Grow(new Box(Math.Min(from.X, to.X), Math.Min(from.Y, to.Y), Math.Max(from.X, to.X), Math.Max(from.Y, to.Y)));
    }

    private void Grow(Box by) =>
        Extent = new Box(Math.Min(Extent.Left, by.Left), Math.Min(Extent.Top, by.Top),
            Math.Max(Extent.Right, by.Right), Math.Max(Extent.Bottom, by.Bottom));

    private sealed record Wanted(string Text, Mm Near, bool IsBold, double Size, Mm? Toward)
    {
        /// <summary>Ways to go from it, those it is wanted on first.</summary>
        public IEnumerable<Mm> Ways()
        {
            var all = Enumerable.Range(0, 32).Select(turn => new Mm(Math.Cos(turn * Math.PI / 16), -Math.Sin(turn * Math.PI / 16)));
            return Toward is not { } toward ? all
                : all.Where(way => (way.X * toward.X) + (way.Y * toward.Y) > 0.1)
                    .OrderByDescending(way => Math.Round((way.X * toward.X) + (way.Y * toward.Y), 6));
        }
    }
}
