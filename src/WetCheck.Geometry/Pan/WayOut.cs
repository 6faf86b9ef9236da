namespace WetCheck.Geometry;

/// <summary>
/// A change with which a floor keeps within its limits, where as it is it can't. Lengths in inches, falls as rise over
/// run.
/// </summary>
/// <param name="Cost">What has to be made otherwise: 1 only the mortar, 2 the pipe under the floor, 3 another drain, 4 a second one.
/// The fraction is a thousandth for each inch of change, so that of two alike the smaller comes first.</param>
public abstract record WayOut(double Cost)
{
    /// <summary>The rim is lower along a wall and higher in the corners.</summary>
    public sealed record DipRim(RimDip Rim) : WayOut(1 + (Rim.Dip / 1000));

    public sealed record MoveDrain(PlanPoint To, double By, double Rim) : WayOut(2 + (By / 1000));

    /// <summary>A channel along a whole wall; the floor is one plane.</summary>
    public sealed record OnePlane(int Wall, double Depth, double RimLeast, double RimMost) : WayOut(3 + (Depth / 1000));

    /// <summary>Two drains, with a level ridge between them.</summary>
    public sealed record TwoDrains(FloorCut Ridge, IReadOnlyList<PlanPoint> Drains, double Rim, double Steepest) : WayOut(4 + (Rim / 1000));

    /// <summary>The part that the drain can't see falls to a low point on a line across the floor, and from there to the drain.</summary>
    public sealed record Split(FloorCut Line, PlanPoint Low, double LowHeight, double Rim) : WayOut(1.5 + (Rim / 1000));

    /// <summary>
    /// The floor falls alike along the shortest way to the drain, so the rim is out of level by the difference of the
    /// ways.
    /// </summary>
    public sealed record ConstantFall(double RimLow, double RimHigh) : WayOut(1.6 + ((RimHigh - RimLow) / 1000));
}
