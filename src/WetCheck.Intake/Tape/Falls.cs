using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads a drop over a distance, or a slope.</summary>
internal static class Falls
{
    public const string Wanted = "a fall, like 1/2 over 36, 1/4 per ft, 2 % or 1:80";

    private const int SteepestDegrees = 45;

    /// <summary>Null: <see cref="TapeText.Fault"/> says why.</summary>
    public static ReadingValue.OfFall? Read(TapeText tape)
    {
        var start = tape.At;
        var minus = tape.Take(Sign.Dash);
        if (Figures.Read(tape, Wanted) is not { } figure)
        {
            return null;
        }

        var number = minus ? -figure.Value : figure.Value;
        if (TakePercent(tape))
        {
            return new ReadingValue.OfFall(number, 100, Unit.PercentFall, ByRatio: true);
        }

        if (tape.Take(Sign.Degree) || tape.Take("deg") || tape.Take("degree") || tape.Take("degrees"))
        {
            return Angle(tape, number, figure.First);
        }

        if (tape.Now.Sign == Sign.Colon || (tape.Now.Is("in") && tape.Ahead(1).IsFigure))
        {
            return Ratio(tape, number, figure.First);
        }

        tape.Rewind(start);
        return Lengths.Read(tape) is { } rise ? OverRun(tape, rise) : null;
    }

    private static bool TakePercent(TapeText tape)
    {
        if (UnitWords.Take(tape, Measure.Percent) is null)
        {
            return false;
        }

        tape.Take("fall");
        return true;
    }

    private static ReadingValue.OfFall? Angle(TapeText tape, Rational degrees, Token first)
    {
        if (degrees.Abs > SteepestDegrees)
        {
            tape.Fail(Faults.TooSteep(first));
            return null;
        }

        // Twelve decimals are more than any level can tell, and the same on every machine.
        var tangent = (decimal)Math.Round(Math.Tan(degrees.Approximate * Math.PI / 180), 12);
        return new ReadingValue.OfFall(tangent, 1, Unit.PercentFall, ByRatio: true);
    }

    private static ReadingValue.OfFall? Ratio(TapeText tape, Rational rise, Token first)
    {
        var between = tape.Now;
        tape.Take();
        if (Figures.Read(tape, Wanted) is not { } run)
        {
            return null;
        }

        if (rise != 1)
        {
            tape.Fail(Faults.SlopeOrDistance(tape, first, between, run.First));
            return null;
        }

        return Fall(tape, rise, run.Value, Unit.RiseOverRun, run.First, byRatio: true);
    }

    private static ReadingValue.OfFall? OverRun(TapeText tape, Length rise)
    {
        if (tape.Now.Is("in") && tape.Ahead(1).IsFigure)
        {
            tape.Fail(Faults.SlopeOrDistance(tape, rise.First, tape.Now, tape.Ahead(1)));
            return null;
        }

        var start = tape.Now;
        if (tape.Take(Sign.Slash) || tape.Take("per"))
        {
            if (!tape.Now.IsFigure)
            {
                return PerUnit(tape, rise, start);
            }
        }
        else if (!tape.Take("over"))
        {
            tape.Fail(Faults.NoRun(tape, rise.First));
            return null;
        }

        return Lengths.Read(tape) is { } run && Units(tape, rise, run) is var (up, along)
            && Lengths.Exact(tape, rise, up) is { } a && Lengths.Exact(tape, run, along) is { } b
            ? Fall(tape, a, b, up, run.First) : null;
    }

    private static ReadingValue.OfFall? PerUnit(TapeText tape, Length rise, Token start)
    {
        var run = UnitWords.Take(tape, Measure.Length);
        if (run != Unit.Foot && run != Unit.Metre)
        {
            tape.Fail(Faults.PerWhat(start));
            return null;
        }

        var up = rise.Unit ?? (run == Unit.Foot ? Unit.Inch : Unit.Millimetre);
        return Lengths.UnitOf(tape, rise, up) is not null && Lengths.Exact(tape, rise, up) is { } a
            ? new ReadingValue.OfFall(a, run.ToBase(1), up == Unit.Inch && run == Unit.Foot ? Unit.InchPerFoot : up) : null;
    }

    /// <summary>Units of two lengths that stand together: one without shares the small unit of the other.</summary>
    public static (Unit First, Unit Second)? Units(TapeText tape, Length one, Length other)
    {
        if (Lengths.UnitOf(tape, one, Shared(tape, other)) is { } a && Lengths.UnitOf(tape, other, Shared(tape, one)) is { } b)
        {
            return (a, b);
        }

        return null;
    }

    private static Unit? Shared(TapeText tape, Length beside) => beside.Unit is not { } unit ? null
        : unit == Unit.Foot ? Unit.Inch
        : unit == Unit.Metre ? (tape.Lone?.IsMetric == true ? tape.Lone : Unit.Millimetre)
        : unit == Unit.Mil ? null
        : unit;

    private static ReadingValue.OfFall? Fall(TapeText tape, Rational rise, Rational run, Unit unit, Token at, bool byRatio = false)
    {
        if (run.Sign > 0)
        {
            return new ReadingValue.OfFall(rise, run, unit, byRatio);
        }

        tape.Fail(Faults.RunOfNothing(at));
        return null;
    }
}
