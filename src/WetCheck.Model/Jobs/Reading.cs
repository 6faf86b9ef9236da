namespace WetCheck.Model;

/// <summary>One answer to one question, kept as typed.</summary>
/// <param name="Planned">Not built yet.</param>
/// <param name="Tool">Null: the tool of its question.</param>
/// <param name="Date">As typed, RFC 3339 date or date and time; null: before all dated ones.</param>
public sealed record Reading(ReadingValue Value, bool Planned, string Typed, At At, Tool? Tool = null,
    string? By = null, string? Date = null)
{
    /// <summary>Which photo shows it, as typed.</summary>
    public string? Photo { get; init; }
}

/// <summary>What an answer says.</summary>
public abstract record ReadingValue
{
    private ReadingValue()
    {
    }

    public sealed record OfChoice(string Key) : ReadingValue;

    /// <summary>A number, or bounds of one. <paramref name="Datum"/> only for a height; null: the datum that was asked.</summary>
    /// <param name="Unit">The unit it was typed in.</param>
    /// <param name="Exact">A typed bound, which carries no tool's band.</param>
    public sealed record OfAmount(Interval Amount, Unit Unit, string? Datum = null, bool Exact = false) : ReadingValue;

    /// <summary>A drop over a distance, in inches; <paramref name="Run"/> of 12 for so much per foot.</summary>
    /// <param name="ByRatio">Typed as per cent, ratio or degrees: the band of the level, not of the tape.</param>
    public sealed record OfFall(Rational Rise, Rational Run, Unit Unit, bool ByRatio = false) : ReadingValue;

    /// <summary>Inches. <paramref name="Between"/>: finished, to studs, overall.</summary>
    /// <param name="Floor">Square inches, of a floor that is no rectangle or loses some to a seat: <c>32 x 32 finished,
    /// floor 880 sq in</c>.</param>
    public sealed record OfSize(Rational Width, Rational Depth, Between Between, Unit Unit, Rational? Floor = null) : ReadingValue;

    /// <summary>Inches from the left wall and from the entry.</summary>
    public sealed record OfPoint(Rational FromLeft, Rational FromEntry, Unit Unit) : ReadingValue;

    /// <param name="Corners">Of the finished floor, one after the other.</param>
    public sealed record OfOutline(CornerPoints Corners, Unit Unit) : ReadingValue;

    /// <param name="Points">Heights from any one level line.</param>
    public sealed record OfLevels(LevelSet Points, Unit Unit) : ReadingValue;

    /// <summary>Looked, not there.</summary>
    public sealed record OfNone : ReadingValue;

    /// <summary>Can't be seen; don't ask again.</summary>
    public sealed record OfHidden : ReadingValue;
}

/// <summary>What a size was taken between.</summary>
public enum Between { NotSaid, Finished, ToStuds, Overall }
