namespace WetCheck.Geometry;

/// <summary>
/// What a rib lies on: the fold of a corner, the way square to a wall, or the edge of a wall's plane beside a round
/// grate.
/// </summary>
internal enum RibKind { Fold, Foot, Edge }

/// <summary>A straight line from the drain to a wall, on which mortar is brought to height first. Inches.</summary>
/// <param name="At">The corner of a fold; else the wall.</param>
/// <param name="End">At the drain, where the floor is at zero.</param>
/// <param name="Height">At the wall.</param>
/// <param name="Up">The way uphill, of length 1, on the plane between this rib and the next against the clock; null:
/// there is no plane of a wall.</param>
/// <param name="Marks">Between the two ends: how far from <paramref name="End"/>, and the height there.</param>
internal sealed record Rib(RibKind Kind, int At, PlanPoint End, PlanPoint Wall, double Height, PlanPoint? Up,
    IReadOnlyList<(double Far, double Height)> Marks)
{
    public double Length => (Wall - End).Length;

    public double Slope => Height / Length;

    /// <summary>How far its marks lie off a straight line, at the most.</summary>
    public double Off => Marks.Select(mark => Math.Abs(mark.Height - (mark.Far * Slope))).DefaultIfEmpty(0).Max();

    /// <summary>From the drain to the wall.</summary>
    public IReadOnlyList<(PlanPoint At, double Height)> Points =>
        [(End, 0), .. Marks.Select(mark => (End + ((Wall - End).Unit * mark.Far), mark.Height)), (Wall, Height)];
}
