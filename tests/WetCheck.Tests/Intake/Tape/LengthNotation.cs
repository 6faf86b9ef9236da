using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Tests.Intake.Tape;

public sealed class LengthNotation
{
    /// <summary>How lengths are typed on site, and what must not be taken for something else.</summary>
    [Theory]
    [InlineData("42-1/2", 85, 2)]
    [InlineData("42 1/2", 85, 2)]
    [InlineData("42 - 1/2", 85, 2)]
    [InlineData("42.5", 85, 2)]
    [InlineData("42½", 85, 2)]
    [InlineData("42 ½", 85, 2)]
    [InlineData("42-½", 85, 2)]
    [InlineData("42 1/2\"", 85, 2)]
    [InlineData("42 1/2 in", 85, 2)]
    [InlineData("42 1/2 in.", 85, 2)]
    [InlineData("42-1/2in", 85, 2)]
    [InlineData("42-1/2 INCHES", 85, 2)]
    [InlineData("42-1/2''", 85, 2)]
    [InlineData("3'-6 1/4\"", 169, 4)]
    [InlineData("3' 6-1/4", 169, 4)]
    [InlineData("3ft 6 1/4in", 169, 4)]
    [InlineData("3 ft. 6-1/4 in.", 169, 4)]
    [InlineData("3ft6in", 42, 1)]
    [InlineData("3’6¼”", 169, 4)]
    [InlineData("3′ 6¼″", 169, 4)]
    [InlineData("3'", 36, 1)]
    [InlineData("3.5'", 42, 1)]
    [InlineData("3'-1/2\"", 73, 2)]
    [InlineData("1/4", 1, 4)]
    [InlineData(".25", 1, 4)]
    [InlineData("0.25", 1, 4)]
    [InlineData("-1/4", -1, 4)]
    [InlineData("−1/4", -1, 4)]
    [InlineData("-3'-6\"", -42, 1)]
    [InlineData("6–1/2", 13, 2)]
    [InlineData("6—1/2", 13, 2)]
    [InlineData("6‑1/2", 13, 2)]
    [InlineData("6 ½”", 13, 2)]
    [InlineData("3’ 6½", 85, 2)]
    [InlineData("6\u00A01/2", 13, 2)]
    [InlineData("6\u20091⁄2\u202Fin", 13, 2)]
    [InlineData("6\u200B 1∕2", 13, 2)]
    [InlineData("６－１／２", 13, 2)]
    [InlineData("42¹⁄₂", 85, 2)]
    [InlineData("1/64", 1, 64)]
    [InlineData("2/4", 1, 2)]
    [InlineData("40 mil", 1, 25)]
    public void Is_read_exactly(string typed, int over, int under)
    {
        var taken = Notation.ReadLength(typed, Unit.Inch);

        taken.Fault.Should().BeNull();
        taken.Value!.Amount.Should().Be(Interval.At(new Rational(over, under)));
        taken.Value.Exact.Should().BeFalse();
    }

    [Theory]
    [InlineData("1080mm", 1080, 1)]
    [InlineData("1080 mm", 1080, 1)]
    [InlineData("108 cm", 1080, 1)]
    [InlineData("1.08 m", 1080, 1)]
    [InlineData("12.5 mm", 25, 2)]
    [InlineData("12-1/2 mm", 25, 2)]
    [InlineData("1080", 1080, 1)]
    public void Metric_is_read_exactly(string typed, int over, int under)
    {
        var taken = Notation.ReadLength(typed, Unit.Millimetre);

        taken.Value!.Amount.Should().Be(Interval.At(new Rational(over, under) * new Rational(5, 127)));
    }

    [Theory]
    [InlineData("42-1/2+", 1360, 1361)]
    [InlineData("42-1/2 strong", 1360, 1361)]
    [InlineData("42-1/2\"+", 1360, 1361)]
    [InlineData("42-1/2-", 1359, 1360)]
    [InlineData("42-1/2 shy", 1359, 1360)]
    [InlineData("42½–", 1359, 1360)]
    [InlineData("42-", 1343, 1344)]
    [InlineData("-42-", -1344, -1343)]
    [InlineData("3'-6 1/2\" shy", 1359, 1360)]
    public void Strong_and_shy_reach_half_a_mark(string typed, int lo32, int hi32)
    {
        var taken = Notation.ReadLength(typed, Unit.Inch);

        taken.Value!.Amount.Should().Be(new Interval(new Rational(lo32, 32), new Rational(hi32, 32)));
        taken.Value.Exact.Should().BeTrue();
    }

    [Fact]
    public void A_metric_mark_is_a_millimetre()
    {
        var taken = Notation.ReadLength("1080 mm strong", Unit.Inch);

        taken.Value!.Amount.Should().Be(new Interval(Unit.Millimetre.ToBase(1080), Unit.Millimetre.ToBase(1080.5m)));
    }

    [Fact]
    public void Over_and_under_are_bounds_that_leave_the_number_out()
    {
        Notation.ReadLength("over 3", Unit.Inch).Value!.Should().BeEquivalentTo(
            new ReadingValue.OfAmount(new Interval(3, null, LoOpen: true), Unit.Inch, Exact: true));
        Notation.ReadLength("under 3-1/2", Unit.Inch).Value!.Amount.Should().Be(new Interval(null, 3.5m, HiOpen: true));
    }

    [Theory]
    [InlineData("3-6", "feet-or-inches", 0, "3 feet 6, or something else? Write 3'-6\", or 42.")]
    [InlineData("5-0", "feet-or-inches", 0, "5 feet 0, or something else? Write 5', or 60.")]
    [InlineData("3-6 1/4", "feet-or-inches", 0, null)]
    [InlineData("42-17", "feet-or-inches", 0, "42-17 is no tape reading. Write it like 42-1/2, or 3'-6\".")]
    [InlineData("42-17/16", "not-a-tape-fraction", 3, null)]
    [InlineData("17/16", "not-a-tape-fraction", 0, "17/16 is not below one. Write 1-7/16, or 1-1/16.")]
    [InlineData("421/2", "not-a-tape-fraction", 0, "421/2 is not below one. Write 42-1/2, or 210-1/2.")]
    [InlineData("42 3/7", "not-a-tape-fraction", 3, null)]
    [InlineData("1/0", "not-a-tape-fraction", 0, null)]
    [InlineData("1/128", "not-a-tape-fraction", 0, null)]
    [InlineData("1.5/2", "not-a-tape-fraction", 0, null)]
    [InlineData("42⅓", "not-a-tape-fraction", 2, null)]
    [InlineData("42.5 1/2", "two-numbers", 5, null)]
    [InlineData("42 43", "two-numbers", 3, null)]
    [InlineData("3.5.2", "two-numbers", 3, null)]
    [InlineData("3' 14\"", "inches-past-a-foot", 3, null)]
    [InlineData("3 furlongs", "unknown-unit", 2, "\"furlongs\" is not a unit of length. Write in, ft, mil, mm, cm or m.")]
    [InlineData("24 h", "unknown-unit", 3, null)]
    [InlineData("3/4 in 36", "slope-or-distance", 0, "A slope, or a drop over a distance? Write 3/4 over 36, or 1 in 48.")]
    [InlineData("42,5", "comma", 2, null)]
    [InlineData("3/4 over 36", "left-over", 4, null)]
    [InlineData("3 in (about)", "left-over", 5, null)]
    [InlineData("", "no-number", 0, null)]
    [InlineData("about 42", "no-number", 0, null)]
    [InlineData("1234567890123", "too-many-digits", 0, null)]
    public void Is_asked_with_a_caret_and_what_to_write(string typed, string code, int offset, string? say)
    {
        var fault = Notation.ReadLength(typed, Unit.Inch).Fault!;

        (fault.Code, fault.Offset).Should().Be((code, offset));
        if (say is not null)
        {
            fault.Say.Should().Be(say);
        }
    }

    [Fact]
    public void A_lone_number_is_asked_where_the_job_has_no_units() =>
        Notation.ReadLength("42", null).Fault!.Code.Should().Be("lone-number");

    [Fact]
    public void A_lone_fraction_is_asked_in_a_job_in_millimetres() =>
        Notation.ReadLength("42-1/2", Unit.Millimetre).Fault!.Code.Should().Be("fraction-of-millimetre");
}
