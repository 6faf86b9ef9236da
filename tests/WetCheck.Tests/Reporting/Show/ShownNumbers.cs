using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Reporting;
using Shown = WetCheck.Reporting.Show;

namespace WetCheck.Tests.Reporting.Show;

public sealed class ShownNumbers
{
    private static readonly Shown English = new("en");
    private static readonly Shown Spanish = new("es");

    [Theory]
    [InlineData("42-1/2", "42-1/2\"  (3'-6 1/2\")")]
    [InlineData("3'-6 1/4\"", "3'-6 1/4\"  (42-1/4\")")]
    [InlineData("36", "36\"  (3'-0\")")]
    [InlineData("1/4", "1/4\"")]
    [InlineData(".25", "1/4\"")]
    [InlineData("0", "0\"")]
    [InlineData("1080mm", "1080 mm (42-1/2\" to nearest 1/16)")]
    [InlineData("108 cm", "1080 mm (42-1/2\" to nearest 1/16)")]
    [InlineData("1.08 m", "1080 mm (42-1/2\" to nearest 1/16)")]
    [InlineData("40 mil", "40 mil")]
    public void A_length_is_shown_as_typed_and_in_the_other_form(string typed, string shown)
    {
        var length = Notation.ReadLength(typed, Unit.Inch).Value!;

        English.BothForms(length.Amount.Lo!.Value, length.Unit).Should().Be(shown);
    }

    [Theory]
    [InlineData("24 h", Measure.Duration, "24 h")]
    [InlineData("1-1/2 h", Measure.Duration, "1.5 h")]
    [InlineData("15 min", Measure.Duration, "15 min")]
    [InlineData("30 d", Measure.Duration, "30 d")]
    [InlineData("900 sq in", Measure.Area, "900 sq in")]
    [InlineData("6-1/2 sq ft", Measure.Area, "6.5 sq ft")]
    [InlineData("50 F", Measure.Temperature, "50 F")]
    [InlineData("49 C", Measure.Temperature, "49 C")]
    [InlineData("95 %", Measure.Percent, "95%")]
    [InlineData("1965", Measure.Count, "1965")]
    [InlineData("1/4 per ft", Measure.Slope, "1/4\" per ft (2.1%)")]
    [InlineData("1:80", Measure.Slope, "1:80")]
    [InlineData("0.1 % fall", Measure.Slope, "0.1%")]
    [InlineData("2 in", Measure.Length, "2\"")]
    [InlineData("40 mm", Measure.Length, "40 mm")]
    public void A_quantity_is_shown_in_its_own_unit(string typed, Measure measure, string shown) =>
        English.Of(Notation.ReadQuantity(typed, measure).Value).Should().Be(shown);

    [Theory]
    [InlineData("1/2 over 36", "1/2\" over 36\"", "3/4\" or more over 36\"")]
    [InlineData("15/32 over 24", "15/32\" over 24\"", "1/2\" or more over 24\"")]
    [InlineData("1/2 over 35", "1/2\" over 35\"", "3/4\" or more over 35\"")]
    [InlineData("1/2 over 3'", "1/2\" over 36\"", "3/4\" or more over 36\"")]
    [InlineData("1/8 per ft", "1/8\" per ft (1%)", "1/4\" per ft (2.1%) or more")]
    [InlineData("1 %", "1%", "2.09% or more")]
    [InlineData("1:80", "1:80", "1:48 or steeper")]
    [InlineData("10 mm over 900 mm", "10 mm over 900 mm", "18.8 mm or more over 900 mm")]
    [InlineData("0 over 6", "0\" over 6\"", "1/8\" or more over 6\"")]
    public void A_fall_and_its_limit_are_shown_over_the_run_that_was_read(string typed, string shown, string limit)
    {
        var fall = Notation.ReadFall(typed, Unit.Inch).Value!;

        English.Fall(fall).Should().Be(shown);
        English.FallLimit(new Rational(1, 48), fall, Comparison.AtLeast).Should().Be(limit);
    }

    [Fact]
    public void A_limit_that_is_no_mark_goes_to_its_good_side()
    {
        English.Limit(new Rational(35, 48), Unit.Inch, Comparison.AtLeast).Should().Be("47/64\" or more");
        English.Limit(new Rational(35, 48), Unit.Inch, Comparison.AtMost).Should().Be("23/32\" or less");
        English.Limit(2, Unit.Millimetre, Comparison.AtLeast).Should().Be("50.8 mm or more");
        English.Limit(60, Unit.Inch, Comparison.Under).Should().Be("less than 60\"");
    }

    [Fact]
    public void A_true_shortfall_is_never_zero()
    {
        English.Short(new Rational(1, 2), Unit.Inch).Should().Be("1/2\"");
        English.Short(new Rational(-1, 2), Unit.Inch).Should().Be("1/2\"");
        English.Short(new Rational(1, 1000), Unit.Inch).Should().Be("less than 1/64\"");
        English.Short(new Rational(1, 100_000), Unit.Millimetre).Should().Be("less than 0.1 mm");
        English.Short(new Rational(1, 100_000), Unit.Foot).Should().Be("less than 1/64\"");
        English.Short(new Rational(1, 1_000_000), Unit.PercentFall).Should().Be("less than 0.1%");
        English.Short(9, Unit.Celsius).Should().Be("5 C");
        English.FallShort(new Rational(1, 144), Notation.ReadFall("1/2 over 36", Unit.Inch).Value!).Should().Be("1/4\"");
    }

    [Fact]
    public void A_height_says_its_side_and_its_datum()
    {
        English.Height(2.5m, Unit.Inch, "the rough curb").Should().Be("2-1/2\" above the rough curb");
        English.Height(-1.75m, Unit.Inch, "the rough curb").Should().Be("1-3/4\" below the rough curb");
        English.Height(0, Unit.Inch, "the rough curb").Should().Be("level with the rough curb");
        English.Height(new Rational(-1, 1000), Unit.Inch, "the bed").Should().Be("less than 1/64\" below the bed");
        Spanish.Height(2.5m, Unit.Inch, "el bordillo").Should().Be("2-1/2\" arriba del bordillo");
    }

    [Fact]
    public void Spanish_keeps_the_digits()
    {
        var fall = Notation.ReadFall("1/2 over 36", Unit.Inch).Value!;

        Spanish.Fall(fall).Should().Be("1/2\" en 36\"");
        Spanish.FallLimit(new Rational(1, 48), fall, Comparison.AtLeast).Should().Be("3/4\" o más en 36\"");
    }

    [Fact]
    public void No_inch_is_ever_a_decimal_and_all_English_is_ASCII()
    {
        var random = new Random(7);
        foreach (var unit in Unit.All)
        {
            for (var i = 0; i < 500; i++)
            {
                var value = new Rational(random.Next(-100_000, 100_000), random.Next(1, 5_000));
                var shown = English.Of(value, unit) + English.Of(value, unit, Rounding.Up)
                    + (unit.Measure == Measure.Length ? English.BothForms(value, unit) : "");
                shown.All(char.IsAscii).Should().BeTrue();
                if (unit == Unit.Inch || unit == Unit.Foot)
                {
                    shown.Should().NotContain(".");
                }
            }
        }
    }
}
