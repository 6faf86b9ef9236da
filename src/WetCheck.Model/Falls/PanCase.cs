namespace WetCheck.Model;

/// <summary>A floor with a level rim, held against one limit with the drain taken one way.</summary>
/// <param name="Feasible">Unknown: the drain's place is not known.</param>
/// <param name="Window">Heights of the rim over the drain between which it keeps to the limit; the first over the
/// second where none does.</param>
/// <param name="Mark">The lowest mark of the tape within; null: none.</param>
/// <param name="Height">That of which the falls are told: the mark, else the least.</param>
/// <param name="Steepest">Of all planes.</param>
/// <param name="Region">Where a drain may stand, against the clock; empty: nowhere.</param>
/// <param name="Nearest">The place of the region nearest to the drain.</param>
/// <param name="Hidden">Walls that the drain can't see.</param>
/// <param name="Ways">What could be made otherwise, the cheapest first; empty where it is feasible.</param>
public sealed record PanCase(
    PanLimits Limits,
    DrainTaken Taken,
    Tri Feasible,
    (double Least, double Most)? Window,
    double? Mark,
    double? Height,
    IReadOnlyList<PanWall> Walls,
    IReadOnlyList<PanFold> Folds,
    double? Steepest,
    IReadOnlyList<Spot> Region,
    Spot? Nearest,
    IReadOnlyList<PanHidden> Hidden,
    IReadOnlyList<PanWay> Ways)
{
    /// <summary>Of a floor with two drains: the drain of the part that is told.</summary>
    public Spot? Part { get; init; }

    /// <summary>Of a channel shorter than its wall: the corners beside it.</summary>
    public IReadOnlyList<PanEnd> Ends { get; init; } = [];

    /// <summary>Nothing worked out yet.</summary>
    public static PanCase Of(PanLimits limits, DrainTaken taken) =>
        new(limits, taken, Tri.Unknown, null, null, null, [], [], null, [], null, [], []);
}

/// <summary>How the drain is taken: as its middle, with its grate, as a channel, as a channel along a wall.</summary>
public enum DrainTaken { Point, Grate, Channel, ChannelAtWall }

/// <param name="Side">As in <see cref="PanSide"/>.</param>
/// <param name="Run">Square to it, to the drain.</param>
public sealed record PanWall(string Side, double Length, double Run, double Slope);

/// <param name="Corner">A place of the vocabulary; empty where it has no name.</param>
public sealed record PanFold(string Corner, Spot At, double Length, double Slope);

/// <param name="Corner">A place of the vocabulary.</param>
/// <param name="Far">From the channel's end.</param>
/// <param name="Height">Over the channel, so that the floor beside it falls to it.</param>
public sealed record PanEnd(string Corner, double Far, double Height);

/// <param name="By">The corner that stands in the way.</param>
public sealed record PanHidden(string Side, Spot By);

/// <summary>Something that could be made otherwise.</summary>
/// <param name="Kind">Of the words that say it: <c>move-drain</c>.</param>
/// <param name="Cost">1 and over only the mortar, 2 the pipe under the floor, 3 another drain, 4 a second one; a
/// thousandth for each inch.</param>
/// <param name="Figures">For the slots of its sentence.</param>
public sealed record PanWay(string Kind, double Cost, IReadOnlyList<PanFigure> Figures);

/// <summary>A length, a fall, a place or a wall, for a slot of a sentence.</summary>
public abstract record PanFigure(string Slot)
{
    public sealed record Length(string Slot, double Inches) : PanFigure(Slot);

    public sealed record Fall(string Slot, double Slope) : PanFigure(Slot);

    public sealed record Place(string Slot, Spot At) : PanFigure(Slot);

    public sealed record Side(string Slot, string Name) : PanFigure(Slot);
}
