using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Tests.Intake.Tape;

public sealed class OtherNotation
{
    [Theory]
    [InlineData("60 x 36", 60, 36, Between.NotSaid)]
    [InlineData("60 by 36", 60, 36, Between.NotSaid)]
    [InlineData("60×36", 60, 36, Between.NotSaid)]
    [InlineData("60x36 finished", 60, 36, Between.Finished)]
    [InlineData("60X36finished", 60, 36, Between.Finished)]
    [InlineData("5' x 3' to studs", 60, 36, Between.ToStuds)]
    [InlineData("5'-0\" x 3'-0\" overall", 60, 36, Between.Overall)]
    [InlineData("60-1/2 x 36 in", 60.5, 36, Between.NotSaid)]
    [InlineData("60in x 36in", 60, 36, Between.NotSaid)]
    [InlineData("60inx36in", 60, 36, Between.NotSaid)]
    public void A_size_is_read_with_what_it_was_taken_between(string typed, double width, double depth, Between between)
    {
        var taken = Notation.ReadSize(typed, Unit.Inch);

        taken.Fault.Should().BeNull();
        (taken.Value!.Width, taken.Value.Depth, taken.Value.Between).Should()
            .Be(((Rational)(decimal)width, (Rational)(decimal)depth, between));
    }

    [Fact]
    public void A_metric_size_is_read_exactly()
    {
        var size = Notation.ReadSize("1500mmx900mm", null).Value!;

        (size.Width, size.Depth).Should().Be((Unit.Millimetre.ToBase(1500), Unit.Millimetre.ToBase(900)));
    }

    [Fact]
    public void A_floor_that_is_no_rectangle_says_its_area()
    {
        var taken = Notation.ReadSize("32 x 32 finished, floor 880 sq in", Unit.Inch);

        taken.Value.Should().Be(new ReadingValue.OfSize(32, 32, Between.Finished, Unit.Inch, 880));
        Notation.ReadSize("32 x 32, floor 880", Unit.Inch).Fault!.Code.Should().Be("no-unit");
    }

    [Theory]
    [InlineData("5-0 x 3-0", "feet-or-inches", 0, "5 feet 0, or something else? Write 5' x 3', or 60 x 36.")]
    [InlineData("60", "one-of-two", 2, null)]
    [InlineData("60, 36", "one-of-two", 2, null)]
    [InlineData("5 x 3 ft", "which-unit", 0, null)]
    [InlineData("5' x 36", "which-unit", 5, null)]
    [InlineData("60 x 0", "size-of-nothing", 5, null)]
    [InlineData("60 x 36 rough", "unknown-unit", 8, null)]
    [InlineData("60 x 36 x 80", "left-over", 8, null)]
    public void A_size_is_asked(string typed, string code, int offset, string? say)
    {
        var fault = Notation.ReadSize(typed, Unit.Inch).Fault!;

        (fault.Code, fault.Offset).Should().Be((code, offset));
        if (say is not null)
        {
            fault.Say.Should().Be(say);
        }
    }

    [Fact]
    public void A_point_is_from_the_left_then_from_the_entry()
    {
        Notation.ReadPoint("30, 18", Unit.Inch).Value.Should().Be(new ReadingValue.OfPoint(30, 18, Unit.Inch));
        Notation.ReadPoint("30-1/2,18", Unit.Inch).Value!.FromLeft.Should().Be((Rational)30.5m);
        Notation.ReadPoint("30", Unit.Inch).Fault!.Code.Should().Be("one-of-two");
        Notation.ReadPoint("30, 18, 4", Unit.Inch).Fault!.Code.Should().Be("comma");
    }

    [Theory]
    [InlineData("900 sq in", Measure.Area, 900)]
    [InlineData("900 in²", Measure.Area, 900)]
    [InlineData("900 in2", Measure.Area, 900)]
    [InlineData("900 square inches", Measure.Area, 900)]
    [InlineData("6 sq ft", Measure.Area, 864)]
    [InlineData("6 sq. ft.", Measure.Area, 864)]
    [InlineData("6 sqft", Measure.Area, 864)]
    [InlineData("6 ft2", Measure.Area, 864)]
    [InlineData("2 cu ft", Measure.Volume, 3456)]
    [InlineData("24 h", Measure.Duration, 1440)]
    [InlineData("24 hours", Measure.Duration, 1440)]
    [InlineData("1-1/2 h", Measure.Duration, 90)]
    [InlineData("1 h 30 min", Measure.Duration, 90)]
    [InlineData("2 d", Measure.Duration, 2880)]
    [InlineData("15min", Measure.Duration, 15)]
    [InlineData("65 F", Measure.Temperature, 65)]
    [InlineData("65°F", Measure.Temperature, 65)]
    [InlineData("65 deg F", Measure.Temperature, 65)]
    [InlineData("65℉", Measure.Temperature, 65)]
    [InlineData("20 C", Measure.Temperature, 68)]
    [InlineData("-40 °C", Measure.Temperature, -40)]
    [InlineData("95", Measure.Percent, 95)]
    [InlineData("95 %", Measure.Percent, 95)]
    [InlineData("4", Measure.Count, 4)]
    [InlineData("1965", Measure.Count, 1965)]
    public void An_amount_is_read_in_its_base_unit(string typed, Measure measure, int expected)
    {
        var taken = Notation.ReadAmount(typed, measure, Unit.Inch);

        taken.Fault.Should().BeNull();
        taken.Value!.Amount.Should().Be(Interval.At(expected));
        Notation.ReadQuantity(typed, measure).Value.Value.Should().Be((Rational)expected);
    }

    [Theory]
    [InlineData("24", Measure.Duration, "no-unit", 0)]
    [InlineData("65", Measure.Temperature, "no-unit", 0)]
    [InlineData("65°", Measure.Temperature, "unknown-unit", 2)]
    [InlineData("24 m", Measure.Duration, "unknown-unit", 3)]
    [InlineData("900 in", Measure.Area, "unknown-unit", 4)]
    [InlineData("30 min 1 h", Measure.Duration, "two-numbers", 7)]
    [InlineData("4.5", Measure.Count, "whole-number", 0)]
    [InlineData("4 nails", Measure.Count, "unknown-unit", 2)]
    [InlineData("95+", Measure.Percent, "strong-or-shy", 0)]
    [InlineData("1,024 sq in", Measure.Area, "comma", 1)]
    public void An_amount_is_asked(string typed, Measure measure, string code, int offset)
    {
        var fault = Notation.ReadAmount(typed, measure, Unit.Inch).Fault!;

        (fault.Code, fault.Offset).Should().Be((code, offset));
    }

    [Fact]
    public void A_quantity_of_a_rule_is_one_exact_number()
    {
        Notation.ReadQuantity("2 in", Measure.Length).Value.Value.Should().Be((Rational)2);
        Notation.ReadQuantity("1/4 per ft", Measure.Slope).Value.Should().Be(Quantity.Of(new Rational(1, 4), Unit.InchPerFoot));
        Notation.ReadQuantity("0.1 % fall", Measure.Slope).Value.Should().Be(Quantity.Of(0.1m, Unit.PercentFall));
        Notation.ReadQuantity("2", Measure.Length).Fault!.Code.Should().Be("lone-number");
        Notation.ReadQuantity("over 2 in", Measure.Length).Fault!.Code.Should().Be("one-number");
        Notation.ReadQuantity("2 in strong", Measure.Length).Fault!.Code.Should().Be("one-number");
    }
}
