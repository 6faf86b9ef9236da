using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Just over a mark, or just under it.</summary>
internal enum Lean { None, Strong, Shy }

/// <summary>A length as typed.</summary>
/// <param name="Number">In <paramref name="Unit"/>; feet and inches together are feet.</param>
/// <param name="Unit">Null: none was written.</param>
/// <param name="Broken">It was written with a fraction.</param>
internal sealed record Length(Rational Number, Unit? Unit, bool Broken, Lean Lean, Token First)
{
    /// <summary>Inches; half a mark to the side it leans to.</summary>
    public Interval Inches(Unit unit)
    {
        var value = unit.ToBase(Number);
        var half = unit.IsMetric ? Unit.Millimetre.ToBase(1) / 2 : new Rational(1, 32);
        var away = value.Sign < 0 || First.Sign == Sign.Dash;
        return Lean switch
        {
            Lean.None => Interval.At(value),
            Lean.Strong when !away => new Interval(value, value + half),
            Lean.Shy when away => new Interval(value, value + half),
            _ => new Interval(value - half, value),
        };
    }
}

/// <summary>Reads one length.</summary>
internal static class Lengths
{
    public const string Wanted = "a length, like 42-1/2, 3'-6 1/4\" or 1080 mm";

    /// <summary>Words that may stand after a length; any other is taken for a unit.</summary>
    private static readonly string[] Follows = ["over", "under", "by", "per", "in", "to", "finished", "overall"];

    /// <summary>Null: <see cref="TapeText.Fault"/> says why.</summary>
    public static Length? Read(TapeText tape)
    {
        var first = tape.Now;
        var minus = tape.Take(Sign.Dash);
        if (!minus)
        {
            tape.Take(Sign.Plus);
        }

        if (Figures.Read(tape, Wanted) is not { } figure)
        {
            return null;
        }

        var number = figure.Value;
        var lean = LeanOf(tape);
        var unit = UnitWords.Take(tape, Measure.Length);
        if (unit == Unit.Foot && lean == Lean.None && InchesFollow(tape))
        {
            tape.Take(Sign.Dash);
            if (Rest(tape, figure) is not { } inches)
            {
                return null;
            }

            number += inches / 12;
            lean = LeanOf(tape);
            UnitWords.TakeInch(tape);
        }

        if (lean == Lean.None)
        {
            lean = LeanOf(tape);
        }

        if (unit is null && tape.Now.Sign == Sign.Word && !Follows.Contains(tape.Now.Text))
        {
            tape.Fail(Faults.UnknownUnit(tape, Measure.Length));
            return null;
        }

        return new Length(minus ? -number : number, unit, figure.Broken, lean, first);
    }

    /// <summary>The unit it counts in. Null: <see cref="TapeText.Fault"/> says why.</summary>
    /// <param name="beside">The unit of the length that stands with it, which a lone number shares.</param>
    public static Unit? UnitOf(TapeText tape, Length length, Unit? beside = null)
    {
        var unit = length.Unit ?? beside ?? tape.Lone;
        if (unit is null)
        {
            tape.Fail(Faults.LoneLength(tape, length.First));
        }
        else if (length is { Unit: null, Broken: true } && unit.IsMetric)
        {
            tape.Fail(Faults.FractionOfMillimetre(length.First));
            unit = null;
        }

        return unit;
    }

    /// <summary>One exact length. Null: <see cref="TapeText.Fault"/> says why.</summary>
    public static Rational? Exact(TapeText tape, Length length, Unit unit)
    {
        if (length.Lean == Lean.None)
        {
            return unit.ToBase(length.Number);
        }

        tape.Fail(Faults.Leaning(length.First));
        return null;
    }

    public static Lean LeanOf(TapeText tape)
    {
        var endsHere = !tape.Ahead(1).IsFigure;
        var lean = tape.Now switch
        {
            { Sign: Sign.Plus } when endsHere => Lean.Strong,
            { Sign: Sign.Dash } when endsHere => Lean.Shy,
            { Sign: Sign.Word, Text: "strong" or "heavy" } => Lean.Strong,
            { Sign: Sign.Word, Text: "shy" or "light" } => Lean.Shy,
            _ => Lean.None,
        };
        tape.Take(lean == Lean.None ? 0 : 1);
        return lean;
    }

    private static bool InchesFollow(TapeText tape) => tape.Now.IsFigure || (tape.Now.Sign == Sign.Dash && tape.Ahead(1).IsFigure);

    private static Rational? Rest(TapeText tape, Figure feet)
    {
        if (Figures.Read(tape, Wanted) is not { } inches)
        {
            return null;
        }

        if (inches.Value >= 12)
        {
            tape.Fail(Faults.PastAFoot(feet, inches));
            return null;
        }

        return inches.Value;
    }
}
