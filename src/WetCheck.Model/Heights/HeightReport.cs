namespace WetCheck.Model;

/// <summary>How high everything of a floor stands, and where water leaves it first. Inches.</summary>
/// <param name="Lines">From the bare floor up, at the drain, at the walls, at the entry; then sizes.</param>
/// <param name="Asked">What the rules ask of heights, moved to where a tape can start.</param>
/// <param name="Water">One for each layer that holds water, in a test and in use.</param>
/// <param name="Missing">What has to be known before more can be told.</param>
/// <param name="Section">What can be drawn of it.</param>
public sealed record HeightReport(
    IReadOnlyList<HeightLine> Lines,
    IReadOnlyList<HeightAsked> Asked,
    IReadOnlyList<WaterStand> Water,
    IReadOnlyList<PanMissing> Missing,
    FloorSection Section);

/// <summary>A height, or the bounds of it.</summary>
/// <param name="Is">As read; unknown where nothing tells it.</param>
/// <param name="IsPlanned">A plan counts in it.</param>
/// <param name="IsApart">Ways to it contradict each other: to be read again.</param>
public sealed record HeightTold(Spread Is, bool IsPlanned, bool IsApart)
{
    public static HeightTold Zero { get; } = new(Spread.Exactly(0), false, false);

    public static HeightTold Unknown { get; } = new(Spread.Everything, false, false);

    public static HeightTold operator +(HeightTold a, HeightTold b) => new(a.Is + b.Is, a.IsPlanned || b.IsPlanned, a.IsApart || b.IsApart);

    public static HeightTold operator -(HeightTold a, HeightTold b) => a + (b with { Is = -b.Is });
}

public enum HeightGroup { Drain, Walls, Entry, Ledges, Size }

/// <param name="Key">Of the words that name it: <c>rough-curb</c>.</param>
/// <param name="Place">Of the vocabulary; empty where it stands everywhere alike.</param>
/// <param name="Datum">That the height is above; null: it is a length of its own.</param>
public sealed record HeightLine(HeightGroup Group, string Key, string Place, HeightTold Height, string? Datum);

/// <summary>What one limit asks, above the datum that is there when it is measured.</summary>
/// <param name="Key">Of the words that say it: <c>turn-up</c>, <c>nail</c>.</param>
/// <param name="Least">Above <paramref name="Datum"/>.</param>
/// <param name="Codes">Families that ask it; empty: all.</param>
/// <param name="Rows">Of the sources of the book.</param>
public sealed record HeightAsked(string Key, string Datum, HeightTold Least, Quantity Limit, string LimitDatum,
    IReadOnlyList<string> Codes, IReadOnlyList<string> Rows);

/// <summary>A layer with water on it.</summary>
/// <param name="Layer">Of the words that name it: <c>liner</c>, <c>membrane</c>, <c>floor</c>.</param>
/// <param name="InUse">With curb and floor finished; else as in a flood test.</param>
/// <param name="Datum">That its heights are above.</param>
/// <param name="Ways">Where water leaves, as far as its height is known, the lowest first.</param>
/// <param name="Open">Those of which only bounds are known.</param>
/// <param name="Unseen">Kinds of exits of which nobody has said that all have been seen.</param>
public sealed record WaterStand(string Layer, bool InUse, string Datum, IReadOnlyList<WaterWay> Ways,
    IReadOnlyList<WaterWay> Open, IReadOnlyList<string> Unseen)
{
    /// <summary>Whether the lowest is at the entry, where it is seen. Unknown where another may be lower.</summary>
    public Tri AtTheEntry =>
        Ways.Count == 0 ? Tri.Unknown
        : !Ways[0].IsEntry ? Ways.Any(way => way.IsEntry && way.Height.Is.AsRead.Lo > Ways[0].Height.Is.AsRead.Lo) ? Tri.No : Tri.Unknown
        : Unseen.Count == 0 && Open.All(way => way.Height.Is.AsRead.Lo >= Ways[0].Height.Is.AsRead.Lo) ? Tri.Yes
        : Tri.Unknown;
}

/// <param name="Key">Of the words that name it: <c>curb</c>, <c>edge</c>, <c>nail</c>, <c>cut</c>, <c>seam</c>.</param>
/// <param name="Height">At which water leaves.</param>
public sealed record WaterWay(string Key, string Place, HeightTold Height, bool IsEntry);
