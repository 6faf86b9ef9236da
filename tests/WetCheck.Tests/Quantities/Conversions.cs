using UnitsNet;
using UnitsNet.Units;
using WetCheck.Model;

namespace WetCheck.Tests.Quantities;

/// <summary>Our exact factors held against UnitsNet, which counts in floating point.</summary>
public sealed class Conversions
{
    private const double Tolerance = 1e-9;

    public static TheoryData<string, double> Pairs => new()
    {
        { "ft", Length.From(1, LengthUnit.Foot).Inches },
        { "mil", Length.From(1, LengthUnit.Mil).Inches },
        { "mm", Length.From(1, LengthUnit.Millimeter).Inches },
        { "cm", Length.From(1, LengthUnit.Centimeter).Inches },
        { "m", Length.From(1, LengthUnit.Meter).Inches },
        { "sq ft", Area.From(1, AreaUnit.SquareFoot).SquareInches },
        { "sq m", Area.From(1, AreaUnit.SquareMeter).SquareInches },
        { "cu ft", Volume.From(1, VolumeUnit.CubicFoot).CubicInches },
        { "l", Volume.From(1, VolumeUnit.Liter).CubicInches },
        { "h", Duration.From(1, DurationUnit.Hour).Minutes },
        { "d", Duration.From(1, DurationUnit.Day).Minutes },
        { "C", Temperature.From(1, TemperatureUnit.DegreeCelsius).DegreesFahrenheit },
    };

    [Theory]
    [MemberData(nameof(Pairs))]
    public void One_of_each_unit(string key, double expected) =>
        (Unit.All.Single(unit => unit.Key == key).ToBase(1).Approximate / expected).Should().BeApproximately(1, Tolerance);

    [Fact]
    public void Whole_degrees_of_a_site()
    {
        for (var degrees = -40; degrees <= 80; degrees++)
        {
            Unit.Celsius.ToBase(degrees).Approximate.Should()
                .BeApproximately(Temperature.FromDegreesCelsius(degrees).DegreesFahrenheit, Tolerance);
        }
    }

    [Fact]
    public void Every_millimetre_of_a_room_and_back()
    {
        for (var millimetres = 0; millimetres <= 4_000; millimetres++)
        {
            var inches = Unit.Millimetre.ToBase(millimetres);
            inches.Approximate.Should().BeApproximately(Length.FromMillimeters(millimetres).Inches, Tolerance);
            Unit.Millimetre.FromBase(inches).Should().Be((Rational)millimetres);
        }
    }

    [Fact]
    public void The_inch_is_25_4_millimetres_exactly() => Unit.Millimetre.FromBase(1).Should().Be((Rational)25.4m);

    [Fact]
    public void A_quarter_inch_to_the_foot_is_1_in_48() => Unit.InchPerFoot.ToBase(new Rational(1, 4)).Should().Be(new Rational(1, 48));
}
