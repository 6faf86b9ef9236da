using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>
/// How numbers are said: in the form they were read in. Inches are tape fractions to 1/64, never decimals; metric lengths are
/// millimetres to a tenth. Values are in base units, exact until they are shown.
/// </summary>
public sealed class Show(NumberWords words)
{
    private const int Finest = 64;

    public Show(string language)
        : this(NumberWords.In(language))
    {
    }

    /// <summary>
    /// An amount in the unit it was written in: <c>2-1/2"</c>, <c>3'-6 1/2"</c>, <c>1080 mm</c>, <c>24 h</c>, <c>50
    /// F</c>, <c>95%</c>, <c>1:80</c>.
    /// </summary>
    public string Of(Quantity quantity) => Of(quantity.Value, quantity.Typed);

    /// <summary>As <see cref="Of(Quantity)"/>. What is not zero is never shown as zero, but as less than the smallest mark.</summary>
    /// <param name="value">In the base unit of the unit's measure.</param>
    public string Of(Rational value, Unit unit, Rounding rounding = Rounding.Nearest)
    {
        var number = Number(value, unit, rounding);
        return value.Sign != 0 && unit.Measure != Measure.Temperature && number == Number(0, unit, rounding)
            ? Fill(words.LessThan, Number(unit.ToBase(SmallestMark(unit)), unit, Rounding.Nearest))
            : number;
    }

    /// <summary>A length in inches: <c>42-1/2"</c>.</summary>
    public static string Inches(Rational inches, Rounding rounding = Rounding.Nearest) => TapeFractions.Inches(inches, Finest, rounding);

    /// <summary>A length in feet and inches: <c>3'-6 1/2"</c>; below a foot in inches.</summary>
    public static string FeetAndInches(Rational inches, Rounding rounding = Rounding.Nearest) =>
        TapeFractions.Feet(inches, Finest, rounding);

    /// <summary>
    /// A length in the form typed and the other once: <c>42-1/2"  (3'-6 1/2")</c>, <c>1080 mm (42-1/2" to nearest
    /// 1/16)</c>.
    /// </summary>
    public string BothForms(Rational inches, Unit unit)
    {
        var own = Of(inches, unit);
        if (unit.IsMetric)
        {
            return $"{own} ({Fill(words.ToNearest, TapeFractions.Inches(inches, 16, Rounding.Nearest))})";
        }

        var other = unit == Unit.Foot ? Inches(inches) : FeetAndInches(inches);
        return own == other || unit == Unit.Mil ? own : $"{own}  ({other})";
    }

    /// <summary>A limit, brought to a mark on its good side: <c>3" or more</c>.</summary>
    public string Limit(Rational value, Unit unit, Comparison by) => Bounded(by, Of(value, unit, Marks.For(by)));

    /// <summary>By how much it is short, or over. Never zero: below the smallest mark <c>less than 1/64"</c>.</summary>
    public string Short(Rational by, Unit unit) => Of(by.Abs + unit.Shift, unit);

    /// <summary>A fall in the form it was read: <c>1/2" over 36"</c>, <c>1/4" per ft (2.1%)</c>, <c>2.1%</c>, <c>1:80</c>.</summary>
    public string Fall(ReadingValue.OfFall fall) => fall switch
    {
        { ByRatio: true } => Of(fall.Rise / fall.Run, fall.Unit),
        { Unit: var unit } when unit == Unit.InchPerFoot => Of(fall.Rise / fall.Run, unit),
        _ => OverRun(Of(fall.Rise, Tape(fall.Unit)), fall.Run, Tape(fall.Unit)),
    };

    /// <summary>
    /// A limit of slope in the form of the reading held against it: <c>3/4" or more over 36"</c>, <c>1/4" per ft (2.1%)
    /// or more</c>, <c>1:48 or steeper</c>.
    /// </summary>
    public string FallLimit(Rational slope, ReadingValue.OfFall read, Comparison by)
    {
        if (!read.ByRatio && read.Unit != Unit.InchPerFoot)
        {
            var unit = Tape(read.Unit);
            return OverRun(Bounded(by, RiseLimit(slope * read.Run, unit, Marks.For(by))), read.Run, unit);
        }

        var limit = Number(slope, read.Unit, Marks.For(by));
        return read.Unit != Unit.RiseOverRun ? Bounded(by, limit)
            : by is Comparison.AtLeast or Comparison.Over ? Fill(words.OrSteeper, limit) : Fill(words.OrFlatter, limit);
    }

    /// <summary>By how much a fall is short in the form it was read: <c>1/4"</c> over the run that was read, else a slope.</summary>
    public string FallShort(Rational slope, ReadingValue.OfFall read) =>
        read.ByRatio ? Of(slope.Abs, Unit.PercentFall)
        : read.Unit == Unit.InchPerFoot ? Of(slope.Abs, read.Unit)
        : Of(slope.Abs * read.Run, Tape(read.Unit));

    /// <summary>A height from the level that was asked: <c>2-1/2" above the rough curb</c>, <c>1-3/4" below the rough curb</c>.</summary>
    public string Height(Rational up, Unit unit, string datum)
    {
        var side = up.Sign > 0 ? words.Above : up.Sign < 0 ? words.Below : words.Level;
        return Contraction.Of(Fill(side, Of(up.Abs, unit)).Replace("{datum}", datum, StringComparison.Ordinal));
    }

    /// <summary>A rise that falls between the finest marks is brought to a sixteenth, which a tape has.</summary>
    private string RiseLimit(Rational rise, Unit unit, Rounding rounding) =>
        unit == Unit.Inch && !(rise * Finest).Denominator.IsOne && !Marks.Count(rise, new Rational(1, 16), rounding).IsZero
            ? TapeFractions.Inches(rise, 16, rounding)
            : Of(rise, unit, rounding);

    private string Number(Rational value, Unit unit, Rounding rounding) => unit switch
    {
        { IsMetric: true, Measure: Measure.Length } => Decimals.Of(Unit.Millimetre.FromBase(value), 1, rounding) + " mm",
        _ when unit == Unit.Inch => Inches(value, rounding),
        _ when unit == Unit.Foot => FeetAndInches(value, rounding),
        _ when unit == Unit.InchPerFoot =>
            $"{words.PerFoot.Replace("{rise}", Inches(value * 12, rounding), StringComparison.Ordinal)} ({Percent(value * 100, rounding)})",
        _ when unit == Unit.PercentFall || (unit == Unit.RiseOverRun && value.Sign <= 0) => Percent(value * 100, rounding, places: 2),
        _ when unit == Unit.RiseOverRun => "1:" + Decimals.Of(1 / value, 1, Steeper(rounding)),
        _ when unit == Unit.Percent => Percent(value, rounding),
        _ => $"{Decimals.Of(unit.FromBase(value), Places(unit), rounding)} {unit.Key}".TrimEnd(),
    };

    private string OverRun(string rise, Rational run, Unit unit) =>
        words.Over.Replace("{rise}", rise, StringComparison.Ordinal).Replace("{run}", Of(run, unit), StringComparison.Ordinal);

    private string Bounded(Comparison by, string number) => Fill(
        by switch
        {
            Comparison.AtLeast => words.OrMore,
            Comparison.AtMost => words.OrLess,
            Comparison.Over => words.MoreThan,
            _ => words.LessThan,
        },
        number);

    /// <summary>A fall in per cent to two places: 2 % and 2.08 % are two limits.</summary>
    private static string Percent(Rational value, Rounding rounding, int places = 1) => Decimals.Of(value, places, rounding) + "%";

    private static string Fill(string words, string number) => words.Replace("{number}", number, StringComparison.Ordinal);

    /// <summary>The smaller the N of 1:N, the steeper.</summary>
    private static Rounding Steeper(Rounding slope) =>
        slope switch { Rounding.Up => Rounding.Down, Rounding.Down => Rounding.Up, _ => slope };

    /// <summary>A fall is read on a tape, its rise and run in one unit.</summary>
    private static Unit Tape(Unit unit) => unit.IsMetric ? Unit.Millimetre : Unit.Inch;

    private static int Places(Unit unit) => unit == Unit.SquareMetre || unit == Unit.Each ? 2 : 1;

    private static Rational SmallestMark(Unit unit) =>
        unit == Unit.Inch ? new Rational(1, Finest)
        : unit == Unit.Foot ? new Rational(1, 12 * Finest)
        : unit == Unit.Centimetre ? new Rational(1, 100)
        : unit == Unit.Metre ? new Rational(1, 10_000)
        : unit == Unit.InchPerFoot ? new Rational(1, Finest)
        : Places(unit) == 2 ? new Rational(1, 100)
        : new Rational(1, 10);
}
