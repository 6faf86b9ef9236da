using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Holds a reading against the range in which it is likely. It bounds nothing: outside it the reading is only asked.</summary>
internal static class Belief
{
    /// <summary>What is hard to believe, in words: <c>35'-5"</c>; null: nothing.</summary>
    public static string? Doubt(Reading reading, ReadingKind kind)
    {
        if (kind.Believable is not var (least, most))
        {
            return null;
        }

        var found = reading.Value switch
        {
            ReadingValue.OfAmount amount when amount.Datum is null =>
                Outside(amount.Amount, least, most) is { } value ? (value, amount.Unit) : ((Rational, Unit)?)null,
            ReadingValue.OfSize size => First([size.Width, size.Depth], size.Unit, least, most),
            ReadingValue.OfPoint point => First([point.FromLeft, point.FromEntry], point.Unit, least, most),
            ReadingValue.OfOutline outline =>
                First([.. outline.Corners.All.SelectMany(corner => new[] { corner.FromLeft, corner.FromEntry })],
                outline.Unit, least, most),
            _ => null,
        };
        return found is var (doubted, unit) ? Spoken(doubted, unit) : null;
    }

    private static (Rational, Unit)? First(IReadOnlyList<Rational> values, Unit unit, Quantity least, Quantity most)
    {
        foreach (var value in values)
        {
            if (value < least.Value || value > most.Value)
            {
                return (value, unit);
            }
        }

        return null;
    }

    /// <summary>An end of the stretch, if no number of it is likely.</summary>
    private static Rational? Outside(Interval amount, Quantity least, Quantity most) =>
        amount.Lo is { } lo && lo > most.Value ? lo : amount.Hi is { } hi && hi < least.Value ? hi : null;

    private static string Spoken(Rational value, Unit unit)
    {
        if (unit.Measure != Measure.Length || unit.IsMetric || value.Abs < 12)
        {
            return $"{Number(unit.FromBase(value))} {unit.Key}".TrimEnd();
        }

        var feet = (value.Abs / 12).Floor();
        return $"{(value.Sign < 0 ? "-" : "")}{feet}'-{Number(value.Abs - (new Rational(feet, 1) * 12))}\"";
    }

    private static string Number(Rational value)
    {
        var whole = value.Abs.Floor();
        var rest = value.Abs - new Rational(whole, 1);
        var sign = value.Sign < 0 ? "-" : "";
        return rest.Sign == 0 ? $"{sign}{whole}"
            : rest.Denominator <= 64 && (rest.Denominator & (rest.Denominator - 1)) == 0 ? whole.IsZero
                ? $"{sign}{rest}" : $"{sign}{whole}-{rest}"
            : value.Approximate.ToString("0.##", CultureInfo.InvariantCulture);
    }
}
