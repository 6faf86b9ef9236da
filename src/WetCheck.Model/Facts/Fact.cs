namespace WetCheck.Model;

/// <summary>What is known of one reading of one part.</summary>
/// <param name="Now">Plans are not known yet.</param>
/// <param name="OnPaper">Plans count as readings.</param>
/// <param name="IsPlanned">A plan stands behind <paramref name="OnPaper"/>.</param>
/// <param name="Clash">Readings of it contradict each other: to be read again.</param>
/// <param name="SaidHidden">The file says it can't be seen.</param>
/// <param name="ReadOnce">One reading counts, so that the tool's band is on it.</param>
/// <param name="Sight">Whether it can be had at this stop.</param>
/// <param name="Counted">The reading that counts, a plan too; null when there is none or geometry filled it.</param>
/// <param name="From">Of a derived fact: the facts it was worked out from.</param>
/// <param name="Explained">Of a derived fact: how, in words.</param>
public sealed record Fact(
    FactId Id,
    ReadingKind Kind,
    Known Now,
    Known OnPaper,
    bool IsPlanned,
    bool Clash,
    bool SaidHidden,
    bool ReadOnce,
    Sight Sight,
    Reading? Counted,
    IReadOnlyList<Fact> From,
    string Explained)
{
    /// <summary>The same thing had by another way; all ways count.</summary>
    public Fact? Also { get; init; }

    /// <summary>By its name alone: what is known of it is long, and facts of one name are few.</summary>
    public override int GetHashCode() => Id.GetHashCode();

    public Known Given(bool onPaper) => onPaper ? OnPaper : Now;

    public bool IsBlank => Now is Known.Nothing && !IsPlanned;
}

/// <summary>The values a reading may still have.</summary>
public abstract record Known
{
    private Known()
    {
    }

    public sealed record Nothing : Known
    {
        public static readonly Nothing Instance = new();
    }

    /// <summary>Looked, not there.</summary>
    public sealed record Absent : Known
    {
        public static readonly Absent Instance = new();
    }

    public sealed record OneOf(string Choice) : Known;

    /// <summary>A number in base units; of a height, up from <paramref name="Datum"/>.</summary>
    public sealed record Number(Spread Spread, string? Datum = null) : Known;

    /// <summary>Two lengths: a size or a point.</summary>
    /// <param name="Floor">Of a size: the area of a floor that is no rectangle.</param>
    public sealed record Pair(Spread First, Spread Second, Between Between, Spread? Floor = null) : Known;

    /// <summary>A floor by its corners, as read.</summary>
    public sealed record Corners(CornerPoints Points) : Known;

    /// <summary>Levels of a floor, as read.</summary>
    /// <param name="Half">Half a mark of the tool: each height is so near to the true one.</param>
    public sealed record Levels(LevelSet Points, Rational Half) : Known;
}
