using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>
/// Quantities as people type them on a phone, a keyboard or a word processor, read exactly. No text makes these throw.
/// A lone number takes the unit of the job (<c>lone</c>: <see cref="Unit.Inch"/> or <see cref="Unit.Millimetre"/>), and only where
/// the reading is a length; null asks. Per cents and counts need no unit; areas, volumes, durations and temperatures always do.
/// </summary>
public static class Notation
{
    /// <summary>A text longer than this is not read.</summary>
    public const int LongestText = 200;

    /// <summary>A number of more digits than this is not read.</summary>
    public const int MostDigits = 12;

    /// <summary>
    /// The number of an amount or a height, without words for direction or datum: <c>42-1/2</c>, <c>3'-6 1/4"</c>, <c>1080mm</c>,
    /// <c>24 h</c>, <c>95 %</c>. <c>42-1/2+</c> and <c>42-1/2 strong</c> go up to half a mark (1/32 in, 0.5 mm) above,
    /// <c>-</c> and <c>shy</c> below;
    /// <c>over 3</c> and <c>under 3</c> are bounds. These are <see cref="ReadingValue.OfAmount.Exact"/>. A slope is
    /// read by <see cref="ReadFall"/>.
    /// </summary>
    public static Taken<ReadingValue.OfAmount> ReadAmount(string text, Measure measure, Unit? lone)
    {
        var tape = TapeText.Of(text, lone);
        return tape.Whole(Amounts.Read(tape, measure), Faults.WantedOf(measure));
    }

    /// <summary>A length, as <see cref="ReadAmount"/>.</summary>
    public static Taken<ReadingValue.OfAmount> ReadLength(string text, Unit? lone) => ReadAmount(text, Measure.Length, lone);

    /// <summary>
    /// A fall: <c>1/2 over 36</c>, <c>1/4 per ft</c>, <c>20 mm/m</c>, <c>2 %</c>, <c>1 in 48</c>, <c>1:80</c>, <c>1.2 deg</c>.
    /// Of per cent, ratio and degrees the run is 100, the N of 1 in N, and 1.
    /// </summary>
    public static Taken<ReadingValue.OfFall> ReadFall(string text, Unit? lone)
    {
        var tape = TapeText.Of(text, lone);
        return tape.Whole(Falls.Read(tape), Falls.Wanted);
    }

    /// <summary>A width by a depth, and what they were taken between: <c>60 x 36 finished</c>,
    /// <c>5' by 3' to studs</c>; a floor that is no rectangle: <c>32 x 32, floor 880 sq in</c>.</summary>
    public static Taken<ReadingValue.OfSize> ReadSize(string text, Unit? lone)
    {
        var tape = TapeText.Of(text, lone);
        return tape.Whole(Pairs.Size(tape), Pairs.WantedSize);
    }

    /// <summary>From the left wall, from the entry: <c>30, 18</c>.</summary>
    public static Taken<ReadingValue.OfPoint> ReadPoint(string text, Unit? lone)
    {
        var tape = TapeText.Of(text, lone);
        return tape.Whole(Pairs.Point(tape), Pairs.WantedPoint);
    }

    /// <summary>A floor by its corners, from the left and from the entry: <c>0,0 60,0 60,36 36,36 36,60 0,60</c>. Or a
    /// rectangle that lacks a
    /// corner: <c>60 x 60 less 24 x 24 at right-back</c>, <c>38 x 38 clipped 18 x 18 at right-back</c>.</summary>
    public static Taken<ReadingValue.OfOutline> ReadOutline(string text, Unit? lone) => text.Length > LongestText
        ? Faults.TooLong(LongestText, Outlines.Example)
        : Outlines.Read(text, lone);

    /// <summary>Levels of a floor, each from the left, from the entry, up from any one level line: <c>0,0 3/4  30,0 3/4
    ///  30,18 0</c>; with <c>down</c> in
    /// front, down from it.</summary>
    public static Taken<ReadingValue.OfLevels> ReadLevels(string text, Unit? lone) => text.Length > LevelSets.LongestText
        ? Faults.TooLong(LevelSets.LongestText, LevelSets.Example)
        : LevelSets.Read(text, lone);

    /// <summary>
    /// A quantity of a rule or vocabulary file, one exact number of any measure: <c>2 in</c>, <c>1/4 per ft</c>, <c>900 sq in</c>,
    /// <c>15 min</c>, <c>50 F</c>, <c>0.1 % fall</c>, <c>1:80</c>.
    /// </summary>
    public static Taken<Quantity> ReadQuantity(string text, Measure measure, Unit? lone = null)
    {
        if (measure == Measure.Slope)
        {
            var fall = ReadFall(text, lone);
            return fall.IsRead
                ? new Quantity(measure, fall.Value.Rise / fall.Value.Run,
                fall.Value.ByRatio ? fall.Value.Unit : Unit.InchPerFoot) : fall.Fault;
        }

        var amount = ReadAmount(text, measure, lone);
        return !amount.IsRead ? amount.Fault
            : !amount.Value.Exact && amount.Value.Amount is { IsPoint: true, Lo: { } value }
                ? new Quantity(measure, value, amount.Value.Unit)
            : Faults.NotOneNumber();
    }
}
