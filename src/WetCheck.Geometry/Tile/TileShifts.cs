namespace WetCheck.Geometry;

/// <summary>What moving a grid over the floor does to its worst step.</summary>
/// <param name="Best">The least that was found, and its grid.</param>
/// <param name="Worst">The most that was found, and its grid.</param>
public sealed record TileShifts((double Step, TileGrid Grid) Best, (double Step, TileGrid Grid) Worst)
{
    /// <summary>
    /// Found by trying places in each direction and then closing in, so the worst may lie a hair above, the best a hair
    /// below.
    /// </summary>
    /// <param name="tries">In each direction.</param>
    public static TileShifts Of(IReadOnlyList<Facet> floor, TileGrid grid, int tries = 8) =>
        Of(shifted => new TileMisfit(floor, shifted).WorstStep, grid, tries);

    private static TileShifts Of(Func<TileGrid, double> worst, TileGrid grid, int tries)
    {
        (double Step, TileGrid Grid) At(TileGrid shifted) => (worst(shifted), shifted);
        var all = Enumerable.Range(0, tries * tries)
            .Select(at => At(grid.Shifted((double)(at / tries) / tries, (double)(at % tries) / tries))).ToList();
        return new TileShifts(Near(all.MinBy(at => at.Step), -1), Near(all.MaxBy(at => at.Step), 1));

        (double Step, TileGrid Grid) Near((double Step, TileGrid Grid) best, int sign)
        {
            for (var step = 0.5 / tries; step > 0.004;)
            {
                var next = new[] { (step, 0.0), (-step, 0.0), (0.0, step), (0.0, -step) }
                    .Select(by => At(best.Grid.Shifted(by.Item1, by.Item2))).MaxBy(at => sign * at.Step);
                (best, step) = sign * (next.Step - best.Step) > 1e-9 ? (next, step) : (best, step / 2);
            }

            return best;
        }
    }

    /// <summary>
    /// The largest square tile whose worst step over all shifts keeps within the allowance; without limit where the
    /// fold has no angle.
    /// </summary>
    /// <param name="fold">Its direction against the joints, in degrees.</param>
    /// <param name="half">Half the difference of the two slopes across the fold, rise over run.</param>
    public static double LargestUncut(double fold, double half, double allowance) => allowance / OnOneFold(fold, half);

    /// <summary>The worst step of a tile of one inch across a single fold; that of a larger one grows with its side.</summary>
    public static double OnOneFold(double fold, double half)
    {
        List<Facet> floor = [
            new(null, [new(-3, 0), new(3, 0), new(3, 3), new(-3, 3)], [0, 0, 3 * half, 3 * half]),
            new(null, [new(-3, -3), new(3, -3), new(3, 0), new(-3, 0)], [3 * half, 3 * half, 0, 0])];

        // Tiles that the edge of this floor would cut are no part of it.
        return Of(
            shifted => new TileMisfit(floor, shifted).Steps.Where(step => step.Of.Middle.Length < 1.7 && step.Beside.Middle.Length < 1.7)
                .Select(step => step.Step).DefaultIfEmpty().Max(),
            new TileGrid(1, 1, 0, default, -fold),
            16).Worst.Step;
    }
}
