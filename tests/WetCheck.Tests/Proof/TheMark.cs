using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>
/// What a tape to 1/16 in can't tell is read again: half a mark either side of a reading taken once, added up in sums, carried
/// through areas and falls. A count or a year has none. Values by hand.
/// </summary>
public sealed class TheMark
{
    private const string Pan = "method: liner under mortar\nunits: inches\nplumbing code: IRC 2021\n";

    /// <summary>2 in above the finished curb, whose cap is known exactly: 3 in on the tape (IRC 2021 P2709.2).</summary>
    [Theory]
    [InlineData("3", Result.Ok)]
    [InlineData("2-63/64", Result.ReadAgain)]
    [InlineData("2-31/32", Result.ReadAgain)]
    [InlineData("[2-63/64, 2-63/64]", Result.Correction)]
    [InlineData("[2-31/32, 2-31/32]", Result.Correction)]
    [InlineData("2-7/8", Result.Correction)]
    public void One_reading_against_a_limit(string top, Result result) => Liner("[1, 1]", top).Should().Be(result);

    /// <summary>Liner and cap each read once: twice half a mark, 1/16 in.</summary>
    [Theory]
    [InlineData("2-15/16", Result.ReadAgain)]
    [InlineData("2-59/64", Result.Correction)]
    [InlineData("[2-31/32, 2-31/32]", Result.ReadAgain)]
    [InlineData("[2-61/64, 2-61/64]", Result.Correction)]
    public void Marks_add_up_in_a_difference(string top, Result result) => Liner("1", top).Should().Be(result);

    /// <summary>30 x 30 is 900 sq in; half a mark of 1/32 on both sides of 29-63/64 reaches it, of 29-15/16 it doesn't.</summary>
    [Theory]
    [InlineData("30 x 30", Result.Ok)]
    [InlineData("29-63/64 x 30", Result.ReadAgain)]
    [InlineData("29-15/16 x 30", Result.Correction)]
    [InlineData("[29-63/64 x 30 finished, 29-63/64 x 30 finished]", Result.Correction)]
    public void Marks_carry_through_a_product(string size, Result result) =>
        One($"method: curbless bonded\nunits: inches\nplumbing code: IRC 2021\nshower: {{ size: "
            + $"{(size[0] == '[' ? size : size + " finished")} }}", "floor/size", "shower").Should().Be(result);

    /// <summary>
    /// 1/4 in per ft over 36 in is 3/4 in: rise and run each within 1/32, so 11/16 + 1/32 over 36 - 1/32 falls short,
    /// 47/64 does not.
    /// </summary>
    [Theory]
    [InlineData("3/4 over 36", Result.Ok)]
    [InlineData("47/64 over 36", Result.ReadAgain)]
    [InlineData("11/16 over 36", Result.Correction)]
    [InlineData("[47/64 over 36, 47/64 over 36]", Result.Correction)]
    public void Marks_carry_through_a_fall(string fall, Result result) =>
        One(Pan + $"liner falls: {{ left: {fall} }}", "floor/liner-fall", "liner facet/left").Should().Be(result);

    /// <summary>A tile's coverage is a look, without a mark: 94 % is short of 95 %, read once or not.</summary>
    [Theory]
    [InlineData("95 %, 95 %, 95 %", Result.Ok)]
    [InlineData("95 %, 95 %, 94 %", Result.Correction)]
    public void A_look_has_no_mark(string tiles, Result result) =>
        One(Pan + $"delivery: {{ made of: ceramic }}\nlifted tiles: {tiles}", "setting/coverage", "tile").Should()
        .Be(result);

    /// <summary>Under 1978: the year itself is not.</summary>
    [Theory]
    [InlineData("1977", true)]
    [InlineData("1978", false)]
    public void A_year_has_no_mark(string year, bool shown) =>
        TheBook.Walk(Pan + $"stage: before liner\nbuilding: {{ built: {year}, disturbs: 20 sq ft, demolition: running }}")
            .Cautions.Any(check => check.Rule.Id == "hazards/lead").Should().Be(shown);

    private static Result Liner(string cap, string top) =>
        One(Pan + $"curb: {{ cap adds: {cap} }}\nliner: {{ right: {top} }}", "liner/turn-up", "liner side/right");

    private static Result One(string job, string rule, string part) =>
        TheBook.Walk(job).Checks.Single(check => check.Rule.Id == rule && check.Part.Id == part).Result;
}
