using WetCheck.Model;
using static WetCheck.Tests.Pan.FloorOfAJob;

namespace WetCheck.Tests.Pan;

/// <summary>
/// The rules on falls read a floor that is told by its corners. Worked out by hand: an L, 60 x 60 less 12 x 12 at the
/// back right, drain at (24, 24):
/// left wall 24 in away, entry 24 in, fold to the left jamb 33.94 in.
/// </summary>
public sealed class OutlinesAreWalked
{
    private const string L = "shower:\n  outline: 60 x 60 less 12 x 12 at right-back\n  drain at: 24, 24\n";

    [Theory]
    [InlineData("1/2", "floor facet/left", 133, Outcome.Ok)]
    [InlineData("3/8", "floor facet/left", 133, Outcome.Correction)]
    [InlineData("1", "floor facet/entry", 134, Outcome.Ok)]
    [InlineData("1-1/8", "floor facet/entry", 134, Outcome.Correction)]
    [InlineData("3/4", "floor valley/left jamb", 135, Outcome.Ok)]
    [InlineData("5/8", "floor valley/left jamb", 135, Outcome.Correction)]
    public void A_wall_or_corner_that_bears_its_name_alone_is_judged(string rim, string part, int rule,
        Outcome outcome) => Of(rim, part, rule).Should().Be(outcome);

    /// <summary>Two walls are on the right, so nobody knows which of them a fall on the right belongs to.</summary>
    [Theory]
    [InlineData("floor facet/right", 133)]
    [InlineData("floor valley/right-back", 135)]
    public void Of_several_on_one_side_none_is(string part, int rule) => Of("1/8", part, rule).Should().Be(Outcome.Open);

    /// <summary>As the crow flies it is 67.9 in to that corner, and 1-1/2 in would do; but the way goes round the inner corner.</summary>
    [Fact]
    public void A_drain_that_cannot_see_the_whole_floor_has_no_such_falls() =>
        Check("method: liner under mortar\n" + Inches.Replace("floor: {", "floor: { rim: 1-1/2,", StringComparison.Ordinal)
            + "shower:\n  outline: 60 x 60 less 36 x 36 at right-back\n  drain at: 48, 12\n", "floor valley/left-back",
                135).Should().Be(Outcome.Open);

    private static Outcome Of(string rim, string part, int rule) =>
        Check("method: liner under mortar\n"
            + Inches.Replace("floor: {", $"floor: {{ rim: {rim},", StringComparison.Ordinal) + L, part, rule);

    private static Outcome Check(string job, string part, int rule) =>
        TheBook.Walk(job).Checks.Single(check => check.Rule.Number == rule && check.Part.Id == part).Judgement.Now;
}
