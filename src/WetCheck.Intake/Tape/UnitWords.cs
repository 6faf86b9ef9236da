using System.Collections.Frozen;
using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>The words and marks that people write for units.</summary>
internal static class UnitWords
{
    /// <summary>The words of the longest unit: <c>deg</c> <c>f</c>.</summary>
    private const int MostPieces = 2;

    private static readonly string[] Inches = ["in", "ins", "inch", "inches", "pulg", "pulgada", "pulgadas"];
    private static readonly string[] Feet = ["ft", "foot", "feet", "pie", "pies"];
    private static readonly string[] Metres = ["m", "metre", "metres", "meter", "meters", "metro", "metros"];

    private static readonly FrozenDictionary<(Measure, string), Unit> All = Build().ToFrozenDictionary();

    public static Unit? Find(Measure measure, string words) => All.GetValueOrDefault((measure, words));

    /// <summary>Whether a 2 or 3 at its end makes it a unit of area or volume.</summary>
    public static bool MayBeRaised(string word) => word is "in" or "ft" or "m";

    /// <summary>Takes the unit that stands next, if one does.</summary>
    public static Unit? Take(TapeText tape, Measure measure)
    {
        for (var pieces = MostPieces; pieces > 0; pieces--)
        {
            var words = string.Join(' ', Enumerable.Range(0, pieces).Select(ahead => Word(tape.Ahead(ahead))));
            if (Find(measure, words) is { } unit)
            {
                tape.Take(pieces);
                return unit;
            }
        }

        return null;
    }

    /// <summary>Takes the inch mark or word after the inches of a length in feet, if one stands there.</summary>
    public static void TakeInch(TapeText tape) => tape.Take(Find(Measure.Length, Word(tape.Now)) == Unit.Inch ? 1 : 0);

    private static string Word(Token token) => token.Sign switch
    {
        Sign.Word => token.Text,
        Sign.Inch => "\"",
        Sign.Foot => "'",
        Sign.Percent => "%",
        Sign.Degree => "deg",
        _ => "",
    };

    private static Dictionary<(Measure, string), Unit> Build()
    {
        var all = new Dictionary<(Measure, string), Unit>();
        Add(Unit.Inch, [.. Inches, "\""]);
        Add(Unit.Foot, [.. Feet, "'"]);
        Add(Unit.Millimetre, "mm", "millimetre", "millimetres", "millimeter", "millimeters");
        Add(Unit.Centimetre, "cm", "centimetre", "centimetres", "centimeter", "centimeters");
        Add(Unit.Metre, Metres);
        Add(Unit.Mil, "mil", "mils");
        Add(Unit.SquareInch, Raised(Inches, "sq", "square", 2));
        Add(Unit.SquareFoot, [.. Raised(Feet, "sq", "square", 2), "sf"]);
        Add(Unit.SquareMetre, Raised(Metres, "sq", "square", 2));
        Add(Unit.CubicInch, Raised(Inches, "cu", "cubic", 3));
        Add(Unit.CubicFoot, [.. Raised(Feet, "cu", "cubic", 3), "cf"]);
        Add(Unit.Litre, "l", "litre", "litres", "liter", "liters", "litro", "litros");
        Add(Unit.Minute, "min", "mins", "minute", "minutes", "minuto", "minutos");
        Add(Unit.Hour, "h", "hr", "hrs", "hour", "hours", "hora", "horas");
        Add(Unit.Day, "d", "day", "days", "dia", "dias");
        Add(Unit.Fahrenheit, Degrees("f", "fahrenheit"));
        Add(Unit.Celsius, Degrees("c", "celsius"));
        Add(Unit.Percent, "%", "percent", "per cent", "pct");
        return all;

        void Add(Unit unit, params string[] words)
        {
            foreach (var word in words)
            {
                all.Add((unit.Measure, word), unit);
            }
        }
    }

    private static string[] Raised(string[] names, string shortly, string fully, int power) =>
        [.. names.SelectMany(name => new[] { $"{shortly} {name}", $"{shortly}{name}", $"{fully} {name}", $"{name}{power}" })];

    private static string[] Degrees(params string[] names) =>
        [.. names.SelectMany(name => new[] { name, $"deg {name}", $"degree {name}", $"degrees {name}" })];
}
