namespace WetCheck.Model;

/// <summary>
/// What the falls of one floor come to, worked out from figures as read. Lengths in inches, falls as rise over run;
/// approximate, for showing.
/// </summary>
/// <param name="Outline">Corners against the clock, seen from above; empty: not known.</param>
/// <param name="Sides">Its walls, clockwise from the entry.</param>
/// <param name="Drain">Null: not known.</param>
/// <param name="Missing">What has to be known before more can be told.</param>
/// <param name="Limits">All that may be in force, the strictest of each measure first.</param>
/// <param name="WithoutLimits">Families that may apply and of which the book has no fall.</param>
/// <param name="Cases">One for each limit and each way to take the drain, and for each drain.</param>
public sealed record PanReport(
    IReadOnlyList<Spot> Outline,
    IReadOnlyList<PanSide> Sides,
    Spot? Drain,
    IReadOnlyList<PanMissing> Missing,
    IReadOnlyList<PanLimits> Limits,
    IReadOnlyList<string> WithoutLimits,
    IReadOnlyList<PanCase> Cases)
{
    /// <summary>Of a floor with two drains: the other one.</summary>
    public Spot? Second { get; init; }

    /// <summary>The largest circle that fits the floor, its diameter too short by 0.002 in at most; null: no floor known.</summary>
    public (Spot Middle, double Across)? Circle { get; init; }

    /// <summary>Where its two parts meet.</summary>
    public (Spot From, Spot To)? Ridge { get; init; }
}

/// <summary>A place of the plan: from the left wall and from the entry, inches.</summary>
public sealed record Spot(double X, double Y);

/// <param name="Name">A place of the vocabulary; of several walls on one side <c>back-1</c>, <c>back-2</c>.</param>
public sealed record PanSide(string Name, double Length);

/// <summary>Something not known.</summary>
/// <param name="Key">Of the words that say it: <c>size-not-finished</c>.</param>
/// <param name="Line">Of the job file.</param>
/// <param name="Write">An answer as it may be typed there.</param>
public sealed record PanMissing(string Key, string Line, string Write);

/// <summary>A least and a most fall that may be in force.</summary>
/// <param name="AlongFolds">The least is read along the folds; else square to each wall.</param>
/// <param name="Disputed">Only some read it so, and nobody has said how it is read here.</param>
/// <param name="Codes">Families that say so.</param>
/// <param name="Held">Of a question that decides and is not answered: the answers with which it is so.</param>
/// <param name="Rows">Of the sources of the book.</param>
public sealed record PanLimits(
    Quantity Least,
    Quantity Most,
    bool AlongFolds,
    bool Disputed,
    IReadOnlyList<string> Codes,
    IReadOnlyList<Choice> Held,
    IReadOnlyList<string> Rows);
