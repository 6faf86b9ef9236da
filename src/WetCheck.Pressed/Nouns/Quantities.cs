using WetCheck.Model;

namespace WetCheck.Pressed;

/// <summary>Every noun of a rule book, described once for writing and reading.</summary>
internal static partial class Carry
{
    private static Rational Rational(Wire wire, Rational value) => new(wire.Whole(value.Numerator), wire.Whole(value.Denominator));

    /// <summary>Units are few and the program's own.</summary>
    private static Unit Unit(Wire wire, Unit? unit)
    {
        var place = wire.Number(unit is null ? 0 : Place(unit));
        return Model.Unit.All[place];
    }

    private static Quantity Quantity(Wire wire, Quantity value) =>
        new(wire.Choice(value.Measure), Rational(wire, value.Value), Unit(wire, value.Typed));

    private static IReadOnlyDictionary<Measure, Quantity> Marks(Wire wire, IReadOnlyDictionary<Measure, Quantity>? marks) =>
        wire.Map(marks, static (wire, measure) => wire.Choice(measure), Quantity);

    private static int Place(Unit unit)
    {
        for (var place = 0; place < Model.Unit.All.Count; place++)
        {
            if (ReferenceEquals(Model.Unit.All[place], unit))
            {
                return place;
            }
        }

        throw new ArgumentException($"the unit {unit.Key} is not one of the program's", nameof(unit));
    }
}
