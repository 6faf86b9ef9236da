using System.Numerics;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Which way a number goes that lies between two marks.</summary>
public enum Rounding
{
    /// <summary>To the nearer mark, away from zero from the middle.</summary>
    Nearest,

    /// <summary>Never below: of a limit to reach, so that who builds to the shown mark is good.</summary>
    Up,

    /// <summary>Never above: of a limit to keep under.</summary>
    Down,
}

/// <summary>Brings a number to a mark.</summary>
internal static class Marks
{
    /// <summary>How many marks it is, below zero for a negative number.</summary>
    public static BigInteger Count(Rational number, Rational mark, Rounding rounding) => rounding switch
    {
        Rounding.Up => -(-number / mark).Floor(),
        Rounding.Down => (number / mark).Floor(),
        _ => ((number.Abs / mark) + new Rational(1, 2)).Floor() * number.Sign,
    };

    public static Rounding For(Comparison? limit) => limit switch
    {
        Comparison.AtLeast or Comparison.Over => Rounding.Up,
        Comparison.AtMost or Comparison.Under => Rounding.Down,
        _ => Rounding.Nearest,
    };
}
