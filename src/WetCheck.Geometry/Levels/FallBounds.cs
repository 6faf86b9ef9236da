using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>A fall as level readings tell it, rise over run.</summary>
/// <param name="Estimate">By least squares; null: the points lie in one line.</param>
/// <param name="Least">It can't be less: infinite where the points do not tell.</param>
/// <param name="Most">It can't be more.</param>
public sealed record FallBounds(double? Estimate, double Least, double Most)
{
    /// <summary>What no arithmetic can hold.</summary>
    private const double Hair = 1e-9;

    /// <summary>A whole interval past a limit is a fault, a whole one inside none. Between them the estimate decides whether to read again:
    /// it alone is never a fault.</summary>
    public LevelVerdict AtLeast(double limit) => Against(Least - limit, Most - limit, (Estimate ?? double.NegativeInfinity) - limit);

    public LevelVerdict AtMost(double limit) => Against(limit - Most, limit - Least, limit - (Estimate ?? double.PositiveInfinity));

    private static LevelVerdict Against(double worst, double best, double estimate) =>
        best < -Hair ? LevelVerdict.Correction
        : worst >= -Hair ? LevelVerdict.Ok
        : estimate >= -Hair ? LevelVerdict.AtTheLimit
        : LevelVerdict.ReadAgain;
}
