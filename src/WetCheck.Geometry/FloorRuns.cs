using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>Where a point drain stands in a rectangle: runs square to the walls, distances to the corners. Inches, with bounds.</summary>
/// <param name="Drain">From the left wall and from the entry.</param>
/// <param name="Size">Only a finished size tells where the finished walls stand, and only of a rectangle.</param>
internal sealed record FloorRuns(Known Drain, Known Size)
{
    private static readonly Spread AnyRun = Spread.Within(Interval.AtLeast(0));

    /// <summary>From the drain to a wall, square to it.</summary>
    public Spread To(string side)
    {
        if (Drain is not Known.Pair drain)
        {
            return AnyRun;
        }

        var run = side switch
        {
            "left" => drain.First,
            "entry" => drain.Second,
            _ when Size is not Known.Pair { Between: Between.Finished, Floor: null } => Spread.Everything,
            "right" => ((Known.Pair)Size).First - drain.First,
            _ => ((Known.Pair)Size).Second - drain.Second,
        };
        return run.Intersect(Interval.AtLeast(0));
    }

    /// <summary>From the drain to a corner.</summary>
    public Spread ToCorner(string corner) => To(corner is "left jamb" or "left-back" ? "left" : "right")
        .Map(To(corner is "left-back" or "right-back" ? "back" : "entry"), Root.OfSumOfSquares);

    /// <summary>How far along a wall the foot of the drain stands: 0 at its corner nearer the entry or the left, 1 at the other.</summary>
    public Spread Along(string side)
    {
        var isAcross = side is "entry" or "back";
        if (Drain is not Known.Pair drain || Size is not Known.Pair { Between: Between.Finished } size)
        {
            return Spread.Within(new Interval(0, 1));
        }

        return (isAcross ? drain.First : drain.Second).Map(isAcross ? size.First : size.Second, Interval.Quotient)
            .Intersect(new Interval(0, 1));
    }
}
