namespace WetCheck.Reporting;

/// <summary>Inches of a section or a wall on the paper: from the left, and up.</summary>
/// <param name="Scale">One inch on the paper is so many of the job.</param>
internal sealed record Profile(Canvas Canvas, int Scale, double Down = 0)
{
    private const double Inch = 25.4;
    private static readonly int[] s_scales = [6, 8, 10, 12, 16, 20, 24, 32, 40, 48, 64, 96];

    /// <param name="wide">Inches that have to find room in <paramref name="most"/> millimetres.</param>
    public static int ScaleFor(double wide, double most) => s_scales.FirstOrDefault(scale => wide * Inch / scale <= most, s_scales[^1]);

    public Mm At(double x, double up) => new(x * Inch / Scale, Down - (up * Inch / Scale));

    public void Line(double x1, double up1, double x2, double up2, Pen pen, Dash dash = Dash.Whole) =>
        Canvas.Line(At(x1, up1), At(x2, up2), pen, dash);

    public void Ring(Pen pen, Hatch? hatch, Dash dash, params (double X, double Up)[] corners) =>
        Canvas.Ring([.. corners.Select(one => At(one.X, one.Up))], pen, hatch, dash);

    public void Block(double left, double bottom, double right, double top, Pen pen, Hatch? hatch) =>
        Ring(pen, hatch, Dash.Whole, (left, bottom), (right, bottom), (right, top), (left, top));
}
