using WetCheck.Intake;
using WetCheck.Model;
using Shown = WetCheck.Reporting.Show;

namespace WetCheck.Tests.Reporting.Show;

/// <summary>What is shown reads back as the same number.</summary>
public sealed class TapeRoundTrip
{
    private static readonly Shown English = new("en");

    [Fact]
    public void Every_64th_up_to_20_feet_in_both_forms()
    {
        for (var mark = 0; mark <= 20 * 12 * 64; mark++)
        {
            Rational inches = new(mark, 64);
            foreach (var shown in new[] { Shown.Inches(inches), Shown.FeetAndInches(inches) })
            {
                if (shown.Contains('.', StringComparison.Ordinal) || Read(shown) != inches)
                {
                    Assert.Fail($"{mark}/64 in is shown as {shown}");
                }
            }
        }
    }

    [Fact]
    public void Every_64th_below_zero_down_to_a_foot()
    {
        for (var mark = 1; mark <= 13 * 64; mark++)
        {
            Rational inches = new(-mark, 64);
            Read(Shown.Inches(inches)).Should().Be(inches);
            Read(Shown.FeetAndInches(inches)).Should().Be(inches);
        }
    }

    [Fact]
    public void Every_tenth_of_a_millimetre_up_to_2_metres()
    {
        for (var tenth = 0; tenth <= 20_000; tenth++)
        {
            var value = Unit.Millimetre.ToBase(new Rational(tenth, 10));
            if (Read(English.Of(value, Unit.Millimetre)) != value)
            {
                Assert.Fail($"{tenth}/10 mm is shown as {English.Of(value, Unit.Millimetre)}");
            }
        }
    }

    private static Rational? Read(string shown) => Notation.ReadLength(shown, null).Value?.Amount.Lo;
}
