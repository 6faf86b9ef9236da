namespace WetCheck.Geometry;

/// <summary>One way to cut a sheet from a roll. Inches.</summary>
/// <param name="Roll">Its width.</param>
/// <param name="Turned">The roll's length runs along the sheet's shorter side.</param>
/// <param name="Length">Off the roll, of all pieces.</param>
/// <param name="Pieces">One, or two with a seam along the roll.</param>
/// <param name="Seam">The middle of the lap, across the roll from the sheet's edge; null without one.</param>
/// <param name="Waste">What is cut away, of what comes off the roll; the lap is no waste.</param>
public sealed record RollCut(double Roll, bool Turned, double Length, int Pieces, double? Seam, double Waste)
{
    /// <summary>Every way, without a seam first, then the least waste.</summary>
    /// <param name="size">Of the sheet.</param>
    /// <param name="drain">From the sheet's edges.</param>
    /// <param name="lap">Of a seam; null where nobody has said it: then none is offered.</param>
    /// <param name="clear">What the lap keeps away from the drain.</param>
    public static IReadOnlyList<RollCut> Of((double Long, double Wide) size, (double Along, double Across) drain,
        IEnumerable<double> rolls, double? lap, double clear) =>
        [.. rolls.SelectMany(roll => new[]
            {
                From(roll, false, size.Long, size.Wide, drain.Across, lap, clear),
                From(roll, true, size.Wide, size.Long, drain.Along, lap, clear),
            })
            .OfType<RollCut>().OrderBy(cut => cut.Pieces).ThenBy(cut => cut.Waste).ThenBy(cut => cut.Turned)];

    private static RollCut? From(double roll, bool turned, double length, double wide, double drain, double? lap, double clear)
    {
        if (wide <= roll)
        {
            return new RollCut(roll, turned, length, 1, null, 1 - (wide / roll));
        }

        // The lap's middle may lie anywhere that leaves both pieces no wider than the roll.
        if (lap is not { } seam || wide + seam > 2 * roll)
        {
            return null;
        }

        var (least, most) = (wide - roll + (seam / 2), roll - (seam / 2));
        var at = Math.Abs(least - drain) >= Math.Abs(most - drain) ? least : most;
        return Math.Abs(at - drain) < clear + (seam / 2) ? null
            : new RollCut(roll, turned, 2 * length, 2, at, 1 - ((wide + seam) / (2 * roll)));
    }
}
