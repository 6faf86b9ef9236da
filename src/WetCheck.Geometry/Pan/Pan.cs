namespace WetCheck.Geometry;

/// <summary>
/// A floor with a level rim that falls to one drain, which sees every wall. Its height over the drain is the rim's
/// times a gauge: 1 on the rim,
/// 0 at the grate. So each wall has one plane, that falls by the rim over the run square to the wall. Any text on
/// convex sets has the proof.
/// </summary>
public sealed class Pan
{
    /// <exception cref="ArgumentException">A wall is behind the drain, or the grate reaches to it.</exception>
    public Pan(Outline outline, PlanPoint drain, Grate grate)
    {
        (Outline, Drain, Grate) = (outline, drain, grate);
        Runs = [.. outline.Walls.Select(wall => Run(wall, drain, grate))];
        Folds = [.. outline.Corners.Select((_, corner) => Fold(outline, corner, drain, grate))];
        if (!outline.IsSeenWholeFrom(drain) || Runs.Any(run => run <= 0))
        {
            throw new ArgumentException("The drain does not see every wall.", nameof(drain));
        }
    }

    public Outline Outline { get; }

    public PlanPoint Drain { get; }

    public Grate Grate { get; }

    /// <summary>From each wall, square to it, to the grate.</summary>
    public IReadOnlyList<double> Runs { get; }

    /// <summary>From each corner to the grate, the longest where several folds start there.</summary>
    public IReadOnlyList<double> Folds { get; }

    /// <summary>The longest way to which the least fall applies.</summary>
    public double Longest(FallMeasure measure) => measure == FallMeasure.Square ? Runs.Max() : Folds.Max();

    /// <summary>Heights of the rim over the drain that keep within the limits. Empty where the first is over the second.</summary>
    public (double Least, double Most) RimWindow(FallLimits limits) => (limits.Least * Longest(limits.Measure), limits.Most * Runs.Min());

    /// <summary>A floor may exceed a limit by what no arithmetic can hold, not by what a tape could show.</summary>
    public bool IsWithin(FallLimits limits) => RimWindow(limits) is var (least, most) && least <= most * (1 + 1e-12);

    internal static double Run(Wall wall, PlanPoint drain, Grate grate) => wall.Distance(drain) - grate.Reach(wall.Inward * -1);

    internal static double Fold(Outline outline, int corner, PlanPoint drain, Grate grate) =>
        FoldEnds(outline, corner, grate).Max(end => (outline.Corners[corner] - drain - end).Length) - grate.Radius;

    /// <summary>The corners of the grate to which folds run from a corner of the floor.</summary>
    internal static IEnumerable<PlanPoint> FoldEnds(Outline outline, int corner, Grate grate) => grate
        .Between(outline.WallAt(corner - 1).Inward * -1, outline.WallAt(corner).Inward * -1, outline.IsInsideOut(corner))
        .Select(at => grate.Corners[at]);
}
