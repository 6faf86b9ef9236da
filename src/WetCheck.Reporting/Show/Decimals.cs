using System.Globalization;
using System.Numerics;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Numbers that are read off a scale or counted, with no more decimals than they need.</summary>
internal static class Decimals
{
    public static string Of(Rational number, int places, Rounding rounding)
    {
        var scale = BigInteger.Pow(10, places);
        var marks = Marks.Count(number, new Rational(1, scale), rounding);
        var (whole, rest) = BigInteger.DivRem(BigInteger.Abs(marks), scale);
        var decimals = rest.ToString(CultureInfo.InvariantCulture).PadLeft(places, '0').TrimEnd('0');
        return string.Create(CultureInfo.InvariantCulture,
            $"{(marks.Sign < 0 ? "-" : "")}{whole}{(decimals.Length == 0 ? "" : ".")}{decimals}");
    }
}
