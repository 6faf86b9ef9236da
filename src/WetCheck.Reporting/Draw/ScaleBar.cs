namespace WetCheck.Reporting;

/// <summary>Tells whether a print was scaled.</summary>
internal static class ScaleBar
{
    public static void Draw(Canvas canvas, DrawSays says)
    {
        var (left, top) = (canvas.Extent.Left, canvas.Extent.Bottom + 5);
        var length = says.Pan.Metric ? 50 : 50.8;
        canvas.Line(new Mm(left, top), new Mm(left + length, top), Pen.Seen);
        canvas.Line(new Mm(left, top - 1.5), new Mm(left, top + 1.5), Pen.Seen);
        canvas.Line(new Mm(left + length, top - 1.5), new Mm(left + length, top + 1.5), Pen.Seen);
        canvas.TextFrom(says.Phrases[says.Pan.Metric ? Phrase.Draw.BarMetric : Phrase.Draw.Bar], new Mm(left, top + 4));
        canvas.TextFrom(says.Phrases[Phrase.Draw.Scaled], new Mm(left, top + 8.5));
    }
}
