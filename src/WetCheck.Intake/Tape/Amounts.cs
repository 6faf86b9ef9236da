using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads one number of a measure. A slope has no unit of this kind, so that it is asked.</summary>
internal static class Amounts
{
    /// <summary>Null: <see cref="TapeText.Fault"/> says why.</summary>
    public static ReadingValue.OfAmount? Read(TapeText tape, Measure measure)
    {
        var over = tape.Take("over");
        var under = !over && tape.Take("under");
        var first = tape.Now;
        if ((measure == Measure.Length ? OfLength(tape) : Plain(tape, measure)) is not { } read)
        {
            return null;
        }

        if (!over && !under)
        {
            return read;
        }

        if (read.Exact || read.Amount.Lo is not { } bound)
        {
            tape.Fail(Faults.Leaning(first));
            return null;
        }

        return read with
        {
            Amount = over ? new Interval(bound, null, LoOpen: true) : new Interval(null, bound, HiOpen: true),
            Exact = true,
        };
    }

    /// <summary>One number, without words for bounds, in base units. Null: <see cref="TapeText.Fault"/> says why.</summary>
    public static Rational? Exact(TapeText tape, Measure measure) => Plain(tape, measure)?.Amount.Lo;

    private static ReadingValue.OfAmount? OfLength(TapeText tape)
    {
        if (Lengths.Read(tape) is not { } length)
        {
            return null;
        }

        return Lengths.UnitOf(tape, length) is { } unit
            ? new ReadingValue.OfAmount(length.Inches(unit), unit, Exact: length.Lean != Lean.None) : null;
    }

    private static ReadingValue.OfAmount? Plain(TapeText tape, Measure measure)
    {
        var start = tape.Now;
        var minus = tape.Take(Sign.Dash);
        Unit? last = null;
        Rational sum = 0;
        do
        {
            if (Figures.Read(tape, Faults.WantedOf(measure)) is not { } figure || UnitAfter(tape, measure, figure) is not { } unit)
            {
                return null;
            }

            if (last is not null && unit.Factor >= last.Factor)
            {
                tape.Fail(Faults.TwoNumbers(start, figure.First));
                return null;
            }

            sum += unit.ToBase(minus ? -figure.Value : figure.Value);
            last = unit;
        }
        while (measure == Measure.Duration && tape.Now.IsFigure);

        return new ReadingValue.OfAmount(Interval.At(sum), last);
    }

    private static Unit? UnitAfter(TapeText tape, Measure measure, Figure figure)
    {
        var unit = UnitWords.Take(tape, measure)
            ?? (measure == Measure.Count ? Unit.Each : measure == Measure.Percent ? Unit.Percent : null);
        var next = tape.Now.Sign;
        var fault = Lengths.LeanOf(tape) != Lean.None ? Faults.Leaning(figure.First)
            : next is Sign.Word or Sign.Inch or Sign.Foot or Sign.Degree or Sign.Percent ? Faults.UnknownUnit(tape, measure)
            : measure == Measure.Count && figure.Value.Denominator != 1 ? Faults.NotWhole(figure.First)
            : next == Sign.Comma ? Faults.LeftOver(tape)
            : unit is null ? Faults.NoUnit(measure, figure.First)
            : null;
        if (fault is null)
        {
            return unit;
        }

        tape.Fail(fault);
        return null;
    }
}
