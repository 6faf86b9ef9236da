using WetCheck.Model;

namespace WetCheck.Tests.Shows;

/// <summary>Least size of a shower, by the published figures of each code: requirements SG-01 to SG-09.</summary>
public sealed class Sizes
{
    [Theory]
    [InlineData("28 x 28", Result.Correction)] // under 900 sq in, 30 in and 1024 sq in
    [InlineData("30 x 30", Result.ToCheck)]    // ICC holds, UPC asks 1024 sq in
    [InlineData("32 x 32", Result.Ok)]         // 1024 sq in
    public void No_code_stated_finished_faces_curb_width_unknown(string size, Result result) => Of(size, "").Should().Be(result);

    [Theory]
    [InlineData("IRC 2021", "30 x 30", Result.Ok)]          // SG-01, SG-02: 900 sq in, 30 in
    [InlineData("IPC 2018", "30 x 30", Result.Ok)]
    [InlineData("IRC 2021", "29 x 40", Result.Correction)]  // SG-02
    [InlineData("IRC 2021", "25 x 52", Result.Ok)]          // SG-04: 1300 sq in
    [InlineData("IPC 2018", "24 x 60", Result.Correction)]
    [InlineData("UPC 2024", "30 x 30", Result.Correction)]  // SG-06
    [InlineData("UPC 2024", "32 x 32", Result.Ok)]          // SG-06, SG-07
    [InlineData("UPC 2024", "30 x 35", Result.Ok)]          // 30 in circle, 1050 sq in
    [InlineData("UPC 2024", "28 x 44", Result.Correction)]  // SG-07: no 30 in circle
    public void By_code(string code, string size, Result result) => Of(size, $"plumbing code: {code}\n").Should().Be(result);

    [Fact]
    public void A_floor_that_loses_some_to_a_seat_is_judged_by_its_area() =>
        Of("32 x 32", "plumbing code: IRC 2021\n", ", floor 880 sq in").Should().Be(Result.Correction);

    private static Result Of(string size, string code, string more = "") =>
        TheBook.Walk($"method: liner under mortar\nunits: inches\n{code}shower: {{ size: \"{size} finished{more}\" "
            + $"}}\n").Checks.Single(check => check.Rule.Number == 101).Result;
}
