using System.Numerics;
using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>A number without sign and unit.</summary>
/// <param name="Broken">It was written with a fraction.</param>
internal sealed record Figure(Rational Value, bool Broken, Token First);

/// <summary>Reads <c>42</c>, <c>42.5</c>, <c>42-1/2</c>, <c>42 1/2</c>, <c>42½</c>, <c>1/2</c>. A dash between is never a minus.</summary>
internal static class Figures
{
    /// <summary>Null: <see cref="TapeText.Fault"/> says why.</summary>
    public static Figure? Read(TapeText tape, string wanted)
    {
        var first = tape.Now;
        if (!first.IsFigure)
        {
            tape.Fail(Faults.NoNumber(tape, wanted));
            return null;
        }

        if (IsFraction(tape, 0))
        {
            return Fraction(tape, alone: true) is { } alone ? new Figure(alone, Broken: true, first) : null;
        }

        tape.Take();
        var dash = tape.Now.Sign == Sign.Dash ? 1 : 0;
        if (IsFraction(tape, dash))
        {
            if (!first.IsWhole)
            {
                tape.Fail(Faults.TwoNumbers(first, tape.Ahead(dash)));
                return null;
            }

            tape.Take(dash);
            return Fraction(tape, alone: false) is { } part ? new Figure(first.Value + part, Broken: true, first) : null;
        }

        if (tape.Ahead(dash) is { Sign: Sign.Number } second)
        {
            tape.Fail(dash == 1 && first.IsWhole ? Faults.FeetOrInches(tape, first, second) : Faults.TwoNumbers(first, second));
            return null;
        }

        return new Figure(first.Value, Broken: false, first);
    }

    private static bool IsFraction(TapeText tape, int ahead) => tape.Ahead(ahead).Sign == Sign.Fraction
        || (tape.Ahead(ahead).Sign == Sign.Number && tape.Ahead(ahead + 1).Sign == Sign.Slash && tape.Ahead(ahead + 2).Sign == Sign.Number);

    private static Rational? Fraction(TapeText tape, bool alone)
    {
        var over = tape.Now;
        tape.Take();
        if (over.Sign == Sign.Fraction)
        {
            return IsOnTape(over.Value.Denominator) ? over.Value : Refuse(tape, Faults.NotOnTape(over.Value.ToString(), over));
        }

        tape.Take();
        var under = tape.Now;
        tape.Take();
        var written = $"{over.Text}/{under.Text}";
        return !over.IsWhole || !under.IsWhole || !IsOnTape(under.Value.Numerator) ? Refuse(tape, Faults.NotOnTape(written, over))
            : over.Value >= under.Value ? Refuse(tape, Faults.NotBelowOne(over, under, alone))
            : over.Value / under.Value;
    }

    private static bool IsOnTape(BigInteger denominator) => denominator > 1 && denominator <= 64 && denominator.IsPowerOfTwo;

    private static Rational? Refuse(TapeText tape, Fault fault)
    {
        tape.Fail(fault);
        return null;
    }
}
