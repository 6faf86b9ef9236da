namespace WetCheck.Model;

/// <summary>What can be drawn of a floor seen from above, as read or planned.</summary>
/// <param name="Outline">Corners against the clock; empty: not known.</param>
/// <param name="Sides">Its walls, clockwise from the entry.</param>
/// <param name="Drain">Null: not known.</param>
/// <param name="Grate">Null: not known.</param>
public sealed record FloorPlan(IReadOnlyList<Spot> Outline, IReadOnlyList<PlanSide> Sides, Spot? Drain, GratePlan? Grate)
{
    public static FloorPlan Unknown { get; } = new([], [], null, null);
}

/// <param name="Name">As in <see cref="PanSide"/>.</param>
public sealed record PlanSide(string Name, Spot From, Spot To);

/// <param name="Corners">Of the grate, where it lies; one for a round one.</param>
/// <param name="Radius">Of a round one, else 0.</param>
public sealed record GratePlan(IReadOnlyList<Spot> Corners, double Radius);
