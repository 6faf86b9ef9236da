using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>How a reading truly stands, whatever anyone knows of it.</summary>
internal abstract record TrueValue
{
    /// <summary>Not there, as a file says <c>none</c> of it.</summary>
    public sealed record Gone : TrueValue;

    public sealed record Chosen(string Key) : TrueValue;

    public sealed record Amount(Rational Number) : TrueValue;

    /// <summary>Of a height: inches above the liner at the drain, where all levels count from.</summary>
    public sealed record Level(Rational At) : TrueValue;

    /// <summary>A drop over a distance, in inches.</summary>
    /// <param name="IsRounded">The true distance is no fraction; this one is within a 64th of it.</param>
    public sealed record Slope(Rational Rise, Rational Run, bool IsRounded = false) : TrueValue;

    /// <summary>Between finished walls, and how much more there is to the studs and overall.</summary>
    /// <param name="Floor">Square inches of a floor that is no rectangle.</param>
    public sealed record Sides(Rational Width, Rational Depth, Rational ToStuds, Rational Overall, Rational? Floor) : TrueValue;

    public sealed record Spot(Rational FromLeft, Rational FromEntry) : TrueValue;
}
