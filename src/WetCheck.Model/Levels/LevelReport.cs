namespace WetCheck.Model;

/// <summary>What level readings of a floor come to. Lengths in inches, falls as rise over run; approximate, for showing.</summary>
/// <param name="Readings">So many were read.</param>
/// <param name="Half">Half a mark of their tool; null: none was read.</param>
/// <param name="Spacing">How far they stand apart; a hollow narrower than twice that can hide between them. Null: no
/// three of them make a triangle.</param>
/// <param name="Planes">One for each wall, then the folds; empty where the drain can't see every wall.</param>
/// <param name="Ponds">Where water stands, the deepest first; empty, too, where the drain was not read.</param>
/// <param name="Flats">Where the floor is proven flatter than the least fall.</param>
/// <param name="Bumps">What to add or shave, the most first.</param>
/// <param name="Again">Readings to take again.</param>
/// <param name="Contours">Lines of one height over the drain, or over the lowest reading.</param>
/// <param name="Missing">What has to be known before more can be told.</param>
public sealed record LevelReport(
    int Readings,
    double? Half,
    double? Spacing,
    IReadOnlyList<LevelPlane> Planes,
    IReadOnlyList<LevelPond> Ponds,
    IReadOnlyList<LevelFlat> Flats,
    IReadOnlyList<LevelBump> Bumps,
    IReadOnlyList<LevelAgain> Again,
    IReadOnlyList<LevelContour> Contours,
    IReadOnlyList<PanMissing> Missing)
{
    /// <summary>
    /// Where water that rises first gets to the edge of the floor, and how high it then stands over the drain; null:
    /// the drain or no edge was read.
    /// </summary>
    public (Spot At, double Height)? FirstOut { get; init; }
}

/// <summary>The fall of a plane square to its wall, or along a fold.</summary>
/// <param name="Place">Side or corner, as in <see cref="PanSide"/>; of a corner without a name empty.</param>
/// <param name="Corner">Of a fold.</param>
/// <param name="Readings">On it.</param>
/// <param name="Estimate">By least squares; null: too few readings.</param>
/// <param name="Least">It can't be less; null: the readings do not tell.</param>
/// <param name="Uneven">So far, at the least, some reading lies off any plane; 0: a plane fits.</param>
/// <param name="Held">Against each limit that it is read for.</param>
public sealed record LevelPlane(
    string Place,
    Spot? Corner,
    int Readings,
    double? Estimate,
    double? Least,
    double? Most,
    double Uneven,
    IReadOnlyList<LevelHeld> Held);

/// <param name="Flat">Against the least fall.</param>
/// <param name="Steep">Against the most fall; null: along a fold, where no most is read.</param>
public sealed record LevelHeld(PanLimits Limits, LevelVerdict Flat, LevelVerdict? Steep);

/// <summary>What level readings say of a limit, the worst last.</summary>
public enum LevelVerdict
{
    Ok,

    /// <summary>Within, as read; the marks leave both open.</summary>
    AtTheLimit,

    /// <summary>Past it, as read; the marks leave both open.</summary>
    ReadAgain,

    /// <summary>Past it whatever the marks leave open.</summary>
    Correction,
}

/// <param name="Depth">At the deepest reading; <paramref name="Least"/> over zero: water stands there whatever the
/// marks leave open.</param>
/// <param name="Area">Square inches.</param>
/// <param name="Volume">Cubic inches.</param>
public sealed record LevelPond(Spot At, double Depth, double Least, double Most, double Area, double Volume);

/// <param name="Most">The fall can't be more.</param>
public sealed record LevelFlat(Spot At, double Most);

/// <param name="Off">Over zero: to shave; under zero: to add.</param>
/// <param name="Readings">So many neighbours lie off the same way.</param>
public sealed record LevelBump(Spot At, double Off, int Readings);

/// <param name="Key">Of the words that say why: <c>twice</c>, <c>outside</c>, <c>alone</c>.</param>
public sealed record LevelAgain(string Key, Spot At);

/// <param name="Line">From end to end; closed where the first is also the last.</param>
public sealed record LevelContour(double Height, IReadOnlyList<Spot> Line);
