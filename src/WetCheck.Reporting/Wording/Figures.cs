using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Numbers in base units as people read them on a tape, a level, a clock.</summary>
internal static class Figures
{
    public static string Of(Quantity quantity) => Of(quantity.Value, quantity.Typed);

    /// <param name="value">In base units of the unit's measure.</param>
    public static string Of(Rational value, Unit unit)
    {
        var number = unit.FromBase(value);
        return unit.Key switch
        {
            "in" => Fraction(number) + "\"",
            "ft" => Fraction(number) + "'",
            "per ft" => Fraction(number) + "\" per ft",
            "% fall" or "%" => Decimal(number) + "%",
            "1 in" => number.Sign == 0 ? "level" : "1 in " + Decimal(1 / number),
            "" => Decimal(number),
            var key => $"{Decimal(number)} {key}",
        };
    }

    /// <summary>The same without the mark of the unit, where a line is short.</summary>
    public static string Bare(string figure) => figure.Replace("\"", "", StringComparison.Ordinal);

    public static string Fall(Rational rise, Rational run, Unit unit) =>
        $"{Of(rise, unit)} over {Of(run, unit)}";

    private static string Fraction(Rational number)
    {
        var sixtyFourths = ((number.Abs * 64) + new Rational(1, 2)).Floor();
        var exact = new Rational(sixtyFourths, 64);
        var whole = exact.Floor();
        var rest = exact - new Rational(whole, 1);
        var sign = number.Sign < 0 ? "-" : "";
        return sign + (rest.Sign == 0 ? whole.ToString(CultureInfo.InvariantCulture) : whole.IsZero ? $"{rest}" : $"{whole}-{rest}");
    }

    private static string Decimal(Rational number) => decimal.Round((decimal)number.Numerator / (decimal)number.Denominator, 2)
        .ToString("0.##", CultureInfo.InvariantCulture);
}
