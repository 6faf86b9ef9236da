using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Tests.Intake.Tape;

public sealed class FallNotation
{
    [Theory]
    [InlineData("1/2 over 36", 1, 72)]
    [InlineData("1/2\" over 36\"", 1, 72)]
    [InlineData("1/2 over 3'", 1, 72)]
    [InlineData("1/2 in over 3 ft", 1, 72)]
    [InlineData("½ over 36", 1, 72)]
    [InlineData("0 over 6", 0, 1)]
    [InlineData("-1/8 over 6", -1, 48)]
    [InlineData("10 mm over 1 m", 1, 100)]
    [InlineData("10 over 1 m", 1, 100)]
    [InlineData("1/4 per ft", 1, 48)]
    [InlineData("1/4\" per foot", 1, 48)]
    [InlineData("1/4 in/ft", 1, 48)]
    [InlineData("1/4/ft", 1, 48)]
    [InlineData("1/4 per 12", 1, 48)]
    [InlineData("20 mm/m", 1, 50)]
    [InlineData("20 per m", 1, 50)]
    [InlineData("2%", 1, 50)]
    [InlineData("2 %", 1, 50)]
    [InlineData("0.1 % fall", 1, 1000)]
    [InlineData("2 per cent", 1, 50)]
    [InlineData("1 in 48", 1, 48)]
    [InlineData("1in48", 1, 48)]
    [InlineData("1:80", 1, 80)]
    [InlineData("1 : 80", 1, 80)]
    [InlineData("0°", 0, 1)]
    [InlineData("45 deg", 1, 1)]
    public void Is_read_exactly(string typed, int over, int under)
    {
        var taken = Notation.ReadFall(typed, Unit.Inch);

        taken.Fault.Should().BeNull();
        (taken.Value!.Rise / taken.Value.Run).Should().Be(new Rational(over, under));
    }

    [Fact]
    public void Keeps_rise_and_run_in_inches()
    {
        Notation.ReadFall("1/2 over 36", Unit.Inch).Value.Should().Be(new ReadingValue.OfFall(new Rational(1, 2), 36, Unit.Inch));
        Notation.ReadFall("1/4 per ft", null).Value.Should().Be(new ReadingValue.OfFall(new Rational(1, 4), 12, Unit.InchPerFoot));
        Notation.ReadFall("2 %", null).Value.Should().Be(new ReadingValue.OfFall(2, 100, Unit.PercentFall, ByRatio: true));
        Notation.ReadFall("1:80", null).Value.Should().Be(new ReadingValue.OfFall(1, 80, Unit.RiseOverRun, ByRatio: true));
        Notation.ReadFall("13 over 900", Unit.Millimetre).Value.Should().Be(
            new ReadingValue.OfFall(Unit.Millimetre.ToBase(13), Unit.Millimetre.ToBase(900), Unit.Millimetre));
    }

    /// <summary>Held against sine over cosine by their series, x = 1.2 pi / 180: 0.0209470139.</summary>
    [Theory]
    [InlineData("1.2deg")]
    [InlineData("1.2 deg")]
    [InlineData("1.2°")]
    [InlineData("1.2 degrees")]
    public void Degrees_are_a_tangent_to_twelve_decimals(string typed)
    {
        var fall = Notation.ReadFall(typed, Unit.Inch).Value!;

        (fall.Rise / fall.Run).Approximate.Should().BeApproximately(0.0209470139, 1e-10);
        (fall.Rise * 1_000_000_000_000m).Denominator.IsOne.Should().BeTrue();
    }

    [Theory]
    [InlineData("3/4 in 36", "slope-or-distance", 0, "A slope, or a drop over a distance? Write 3/4 over 36, or 1 in 48.")]
    [InlineData("2:100", "slope-or-distance", 0, null)]
    [InlineData("1/4\" in 12\"", "slope-or-distance", 0, null)]
    [InlineData("1/2", "fall-without-run", 0, "\"1/2\" over what distance? Write it like 1/2 over 36, 1/4 per ft, 2 % or 1:80.")]
    [InlineData("1/2 over 0", "run-of-nothing", 9, null)]
    [InlineData("1:0", "run-of-nothing", 2, null)]
    [InlineData("1/2 over 3-6", "feet-or-inches", 9, null)]
    [InlineData("1/4 per cubit", "unknown-unit", 4, null)]
    [InlineData("1/4 per in", "unknown-unit", 4, null)]
    [InlineData("one line", "no-number", 0, null)]
    [InlineData("1/2+ over 36", "strong-or-shy", 0, null)]
    [InlineData("89 deg", "too-steep", 0, null)]
    [InlineData("1/2 over 36 to the drain", "left-over", 12, null)]
    public void Is_asked_with_a_caret_and_what_to_write(string typed, string code, int offset, string? say)
    {
        var fault = Notation.ReadFall(typed, Unit.Inch).Fault!;

        (fault.Code, fault.Offset).Should().Be((code, offset));
        if (say is not null)
        {
            fault.Say.Should().Be(say);
        }
    }
}
