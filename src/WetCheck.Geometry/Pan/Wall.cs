namespace WetCheck.Geometry;

/// <summary>One side of an outline, the floor on its left.</summary>
public sealed record Wall(PlanPoint From, PlanPoint To)
{
    private const double Hair = 1e-9;

    public double Length => (To - From).Length;

    public PlanPoint Along { get; } = (To - From).Unit;

    /// <summary>Square to the wall, into the floor.</summary>
    public PlanPoint Inward => Along.Turned;

    /// <summary>Square to the line of the wall; below zero behind it. The foot may lie beyond the wall's ends.</summary>
    public double Distance(PlanPoint point) => Inward.Dot(point - From);

    /// <summary>How far along the wall the point's foot lies, from its start.</summary>
    public double Foot(PlanPoint point) => Along.Dot(point - From);

    public bool Holds(PlanPoint point) => Math.Abs(Distance(point)) < Hair && Foot(point) > -Hair && Foot(point) < Length + Hair;

    /// <summary>The two have a point in common.</summary>
    public bool Meets(Wall other)
    {
        var (a, b) = (Distance(other.From), Distance(other.To));
        var (c, d) = (other.Distance(From), other.Distance(To));
        return (a * b < 0 && c * d < 0) || Holds(other.From) || Holds(other.To) || other.Holds(From) || other.Holds(To);
    }
}
