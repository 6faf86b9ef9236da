using System.Globalization;
using System.Numerics;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Inches as a tape shows them: reduced fractions, never a decimal.</summary>
internal static class TapeFractions
{
    /// <summary><c>42-1/2"</c>, <c>1/4"</c>, <c>-2"</c>.</summary>
    /// <param name="finest">Marks to an inch: 64, or 16.</param>
    public static string Inches(Rational inches, int finest, Rounding rounding)
    {
        var marks = Marks.Count(inches, new Rational(1, finest), rounding);
        return $"{Sign(marks)}{Mixed(BigInteger.Abs(marks), finest, "-")}\"";
    }

    /// <summary><c>3'-6 1/2"</c>, <c>3'-0"</c>, <c>3'-0 3/4"</c>; below a foot as inches.</summary>
    public static string Feet(Rational inches, int finest, Rounding rounding)
    {
        var marks = Marks.Count(inches, new Rational(1, finest), rounding);
        var (feet, rest) = BigInteger.DivRem(BigInteger.Abs(marks), 12 * finest);
        return feet.IsZero ? Inches(inches, finest, rounding)
            : string.Create(CultureInfo.InvariantCulture,
                $"{Sign(marks)}{feet}'-{(rest.Sign > 0 && rest < finest ? "0 " : "")}{Mixed(rest, finest, " ")}\"");
    }

    private static string Sign(BigInteger marks) => marks.Sign < 0 ? "-" : "";

    private static string Mixed(BigInteger marks, int finest, string joint)
    {
        var (whole, rest) = BigInteger.DivRem(marks, finest);
        var fraction = new Rational(rest, finest).ToString();
        return rest.IsZero ? whole.ToString(CultureInfo.InvariantCulture)
            : whole.IsZero ? fraction
            : string.Create(CultureInfo.InvariantCulture, $"{whole}{joint}{fraction}");
    }
}
