namespace WetCheck.Model;

/// <summary>
/// What is marked before mortar is placed. Lengths in inches, falls as rise over run. Zero is the top of the drain,
/// finished.
/// </summary>
/// <param name="Plan">Null: none is worked out, and <paramref name="Why"/> or what is missing says so.</param>
/// <param name="Why">Of the words that say it, <c>no-mark</c>; empty where there is a plan, or something is not known.</param>
/// <param name="Window">Between which a level rim would keep to all limits; the first over the second where none does.
/// Null: not worked out.</param>
/// <param name="Missing">What has to be known before more can be told.</param>
public sealed record MarkReport(MarkPlan? Plan, string Why, (double Least, double Most)? Window, IReadOnlyList<PanMissing> Missing);

/// <param name="Taken">What the floor falls to.</param>
/// <param name="GivenRim">The job says the rim; else the lowest on a mark that keeps to the limits.</param>
/// <param name="OnTape">Every height at a wall is a mark of the tape.</param>
/// <param name="Lowest">Of the rim.</param>
/// <param name="Highest">Of the rim; the lowest where it is level.</param>
/// <param name="Ribs">Clockwise from the entry.</param>
/// <param name="Steepest">Of the floor as it comes of the marks alone.</param>
/// <param name="Flattest">Likewise, of the ways down along the ribs.</param>
/// <param name="Dropped">Marks that were left out, since their rounding would break a limit.</param>
/// <param name="Held">All limits that may be in force.</param>
/// <param name="Below">Rims of the layers below, the highest first.</param>
public sealed record MarkPlan(
    DrainTaken Taken,
    bool GivenRim,
    bool OnTape,
    double Lowest,
    double Highest,
    IReadOnlyList<MarkRib> Ribs,
    double Steepest,
    double Flattest,
    int Dropped,
    IReadOnlyList<MarkHeld> Held,
    IReadOnlyList<MarkBelow> Below)
{
    public bool IsLevel => Highest - Lowest < 1e-9;
}

/// <summary>A straight line of mortar from the drain to a wall.</summary>
/// <param name="Kind"><c>corner</c>, <c>wall</c>, or <c>plane</c>: the edge of a wall's plane beside a round grate.</param>
/// <param name="Name">A place of the vocabulary; empty where it has no name.</param>
/// <param name="From">At the wall.</param>
/// <param name="To">At the drain.</param>
/// <param name="Length">To the nearest mark of the tape.</param>
/// <param name="Height">At the wall.</param>
/// <param name="Marks">Between: how far from the drain, and the height there.</param>
public sealed record MarkRib(string Kind, string Name, Spot From, Spot To, double Length, double Height,
    IReadOnlyList<(double Far, double Height)> Marks);

/// <param name="Kept">By the floor as it comes of the marks alone.</param>
/// <param name="Tight">A mark at the wall half a mark of the tape off can break it.</param>
public sealed record MarkHeld(PanLimits Limits, bool Kept, bool Tight);

/// <summary>The same fall a layer deeper.</summary>
/// <param name="Layer"><c>bed</c>, or <c>pre-slope</c>.</param>
/// <param name="Down">How far below the finished floor, everywhere.</param>
public sealed record MarkBelow(string Layer, double Down);
