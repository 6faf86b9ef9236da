namespace WetCheck.Reporting;

/// <summary>
/// Strings of dimensions: thin lines with a tick at each end, the text above them, read from the bottom or from the right. A text that does
/// not fit between its ticks becomes a label.
/// </summary>
internal static class Dimensions
{
    private const double Tick = 0.9;
    private const double Above = 2.6;

    /// <param name="places">Along the string, from the left.</param>
    /// <param name="from">Where the lines up to it begin.</param>
    /// <param name="text">Of one length between two neighbours, by their numbers.</param>
    public static void Across(Canvas canvas, IReadOnlyList<double> places, double at, double from, Func<int, string> text)
    {
        for (var one = 0; one < places.Count; one++)
        {
            Ticked(canvas, new Mm(places[one], at), new Mm(places[one], from), new Mm(0, Math.Sign(at - from)));
        }

        for (var one = 0; one + 1 < places.Count; one++)
        {
            canvas.Line(new Mm(places[one], at), new Mm(places[one + 1], at), Pen.Thin);
            Write(canvas, text(one), new Mm((places[one] + places[one + 1]) / 2, at), new Mm(0, -Above),
                places[one + 1] - places[one], isUpright: false);
        }
    }

    /// <param name="places">Along the string, from the bottom up: the first has the greatest distance from the top.</param>
    public static void Upright(Canvas canvas, IReadOnlyList<double> places, double at, double from, Func<int, string> text)
    {
        for (var one = 0; one < places.Count; one++)
        {
            Ticked(canvas, new Mm(at, places[one]), new Mm(from, places[one]), new Mm(Math.Sign(at - from), 0));
        }

        for (var one = 0; one + 1 < places.Count; one++)
        {
            canvas.Line(new Mm(at, places[one]), new Mm(at, places[one + 1]), Pen.Thin);
            Write(canvas, text(one), new Mm(at, (places[one] + places[one + 1]) / 2), new Mm(-Above, 0),
                places[one] - places[one + 1], isUpright: true);
        }
    }

    private static void Write(Canvas canvas, string text, Mm middle, Mm above, double room, bool isUpright)
    {
        if (Lettering.Width(text, Lettering.Plain, isBold: false) + 2 < room && canvas.IsFree(text, middle + above, isUpright))
        {
            canvas.Text(text, middle + above, isUpright);
        }
        else
        {
            canvas.Label(text, middle);
        }
    }

    private static void Ticked(Canvas canvas, Mm at, Mm from, Mm past)
    {
        var gap = (at - from).Unit;
        canvas.Line(from + (gap * 1), at + (past * 1.2), Pen.Thin);
        canvas.Line(at + new Mm(-Tick, Tick), at + new Mm(Tick, -Tick), Pen.Seen);
    }
}
