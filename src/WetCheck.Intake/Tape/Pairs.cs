using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads two lengths that belong together: a size, a point.</summary>
internal static class Pairs
{
    public const string WantedSize = "a size, like 60 x 36 or 5' x 3'";

    public const string WantedPoint = "two distances, like 30, 18";

    /// <summary>Null: <see cref="TapeText.Fault"/> says why.</summary>
    public static ReadingValue.OfSize? Size(TapeText tape)
    {
        if (Faults.FeetOrInchesTwice(tape) is { } asked)
        {
            tape.Fail(asked);
            return null;
        }

        if (Lengths.Read(tape) is not { } width)
        {
            return null;
        }

        if (!tape.Take(Sign.Times) && !tape.Take("by"))
        {
            tape.Fail(Faults.OneOfTwo(tape, WantedSize));
            return null;
        }

        if (Lengths.Read(tape) is not { } depth || Both(tape, width, depth) is not var (a, b, unit))
        {
            return null;
        }

        if (a.Sign <= 0 || b.Sign <= 0)
        {
            tape.Fail(Faults.SizeOfNothing(a.Sign <= 0 ? width.First : depth.First));
            return null;
        }

        var between = BetweenWhat(tape);
        if (tape.Now.Sign != Sign.Comma || !tape.Ahead(1).Is("floor"))
        {
            return new ReadingValue.OfSize(a, b, between, unit);
        }

        tape.Take(2);
        return Amounts.Exact(tape, Measure.Area) is { } floor ? new ReadingValue.OfSize(a, b, between, unit, floor) : null;
    }

    /// <summary>Null: <see cref="TapeText.Fault"/> says why.</summary>
    public static ReadingValue.OfPoint? Point(TapeText tape)
    {
        // "30 18" would be told as one number gone wrong, where a comma is all that is missing.
        if (tape.Ahead(0).IsFigure && tape.Ahead(1) is { IsFigure: true, Gap: true } && tape.Ahead(2).Sign == Sign.End)
        {
            tape.Fail(Faults.OneOfTwo(tape, WantedPoint));
            return null;
        }

        if (Lengths.Read(tape) is not { } left)
        {
            return null;
        }

        if (!tape.Take(Sign.Comma))
        {
            tape.Fail(Faults.OneOfTwo(tape, WantedPoint));
            return null;
        }

        return Lengths.Read(tape) is { } entry && Both(tape, left, entry) is var (a, b, unit)
            ? new ReadingValue.OfPoint(a, b, unit) : null;
    }

    private static (Rational First, Rational Second, Unit Unit)? Both(TapeText tape, Length one, Length other)
    {
        // In "5 x 3 ft" the 5 may be feet, in "60 x 3 ft" inches.
        var (lone, said) = one.Unit is null ? (one, other.Unit) : other.Unit is null ? (other, one.Unit) : (one, null);
        if (said is not null && (said == Unit.Foot || said == Unit.Metre))
        {
            tape.Fail(Faults.WhichUnit(lone.First, said));
            return null;
        }

        if (Falls.Units(tape, one, other) is not var (a, b) || Lengths.Exact(tape, one, a) is not { } first
            || Lengths.Exact(tape, other, b) is not { } second)
        {
            return null;
        }

        if (first.Abs > Limits.SideInches || second.Abs > Limits.SideInches)
        {
            var far = first.Abs > Limits.SideInches ? one.First : other.First;
            tape.Fail(Faults.SideTooLong(far.Text, far.Start));
            return null;
        }

        return (first, second, a);
    }

    private static Between BetweenWhat(TapeText tape)
    {
        var start = tape.At;
        if (tape.Take("finished"))
        {
            return Between.Finished;
        }

        if (tape.Take("overall"))
        {
            return Between.Overall;
        }

        if (tape.Take("to"))
        {
            tape.Take("the");
            if (tape.Take("studs"))
            {
                return Between.ToStuds;
            }
        }

        tape.Rewind(start);
        return Between.NotSaid;
    }
}
