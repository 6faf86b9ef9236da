namespace WetCheck.Geometry;

/// <summary>
/// A point of the plan, or the way from one to another. Inches, seen from above: x from left to right, y from the entry
/// to the back.
/// </summary>
public readonly record struct PlanPoint(double X, double Y)
{
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>A quarter turn against the clock.</summary>
    public PlanPoint Turned => new(-Y, X);

    public PlanPoint Unit => this * (1 / Length);

    public double Dot(PlanPoint other) => (X * other.X) + (Y * other.Y);

    /// <summary>Over zero where the other lies against the clock from this.</summary>
    public double Cross(PlanPoint other) => (X * other.Y) - (Y * other.X);

    public static PlanPoint operator +(PlanPoint a, PlanPoint b) => new(a.X + b.X, a.Y + b.Y);

    public static PlanPoint operator -(PlanPoint a, PlanPoint b) => new(a.X - b.X, a.Y - b.Y);

    public static PlanPoint operator *(PlanPoint a, double by) => new(a.X * by, a.Y * by);
}
