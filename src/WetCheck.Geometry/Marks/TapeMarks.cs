namespace WetCheck.Geometry;

/// <summary>The marks of the tape that a floor is set out with. Inches.</summary>
/// <param name="Mark">The smallest that is used.</param>
/// <param name="Step">Between the heights that are marked along a rib.</param>
internal sealed record TapeMarks(double Mark, double Step)
{
    /// <summary>Nearer to an end than this a mark tells nothing that the end does not.</summary>
    private const double Clear = 4;

    public static TapeMarks Of(bool metric) => metric ? new(1 / 25.4, 5 / 25.4) : new(1 / 16d, 1 / 4d);

    /// <summary>The lowest mark that is not below.</summary>
    public double Up(double height) => Math.Ceiling((height / Mark) - 1e-9) * Mark;

    public double Near(double length) => Math.Round(length / Mark) * Mark;

    /// <summary>
    /// Where a straight rib stands at even heights. The height is exact and the distance rounded, since a sixteenth of
    /// distance is less than
    /// a hundredth of an inch of height.
    /// </summary>
    public IReadOnlyList<(double Far, double Height)> Along(double length, double height)
    {
        var marks = new List<(double, double)>();
        for (var at = 1; at * Step < height - 1e-9; at++)
        {
            var far = Near(length * at * Step / height);
            if (far >= Clear && far <= length - Clear)
            {
                marks.Add((far, at * Step));
            }
        }

        return marks;
    }
}
