using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Shows;

/// <summary>
/// Published limits by code: on the limit it is met, 1/8 in past it a Correction, and the list says which code applied.
/// Values: requirements LN-01 to LN-04, DR-01, DR-02, each named beside its row.
/// </summary>
public sealed class CodeLimits
{
    private const string Liner = "method: liner under mortar\nunits: inches\nstage: flood test\n";
    private const string Curb = "curb: { cap adds: 1 }\n";

    [Theory]
    [InlineData("IRC 2021", "3", Result.Ok)]              // LN-01: 2 in above the finished threshold (IRC P2709.2)
    [InlineData("IRC 2021", "2-7/8", Result.Correction)]
    [InlineData("IPC 2018", "3", Result.Ok)]              // LN-01: IPC 417.5.2
    [InlineData("IPC 2018", "2-7/8", Result.Correction)]
    [InlineData("IRC 2006", "4", Result.Ok)]              // LN-02: 3 in
    [InlineData("IRC 2006", "3-7/8", Result.Correction)]
    [InlineData("UPC 2021", "4", Result.Ok)]              // LN-03: 3 in (UPC 408.7)
    [InlineData("UPC 2021", "3-7/8", Result.Correction)]
    public void Turn_up_above_the_finished_threshold(string code, string top, Result result) =>
        Says($"{Liner}plumbing code: {code}\n{Curb}liner: {{ right: {top} }}\n", 214, "right", result, code);

    [Theory]
    [InlineData("UPC 2021", "3", Result.Ok)]              // LN-04: 3 in above the seat
    [InlineData("UPC 2021", "2-7/8", Result.Correction)]
    public void Turn_up_at_a_seat(string code, string top, Result result) =>
        Says($"{Liner}plumbing code: {code}\nliner: {{ seat: {top} }}\n", 218, null, result, code);

    [Theory]
    [InlineData("UPC 2021", "2", Result.Ok)]              // DR-01: 2 in trap and arm (UPC table 702.1)
    [InlineData("UPC 2021", "1-1/2", Result.Correction)]
    [InlineData("IPC 2018", "1-1/2", Result.Ok)]          // DR-02: 1-1/2 in (IPC 417.3)
    [InlineData("IPC 2018", "1-1/4", Result.Correction)]
    public void Outlet_of_the_drain(string code, string pipe, Result result) =>
        Says($"{Liner}plumbing code: {code}\ndrain: {{ pipe: {pipe} }}\n", 201, null, result, code);

    [Theory]
    [InlineData("IRC 2021", "30 x 30", Result.Ok)]        // SG-01, SG-02
    [InlineData("UPC 2024", "30 x 30", Result.Correction)] // SG-06
    public void Least_size(string code, string size, Result result) =>
        Says($"{Liner}plumbing code: {code}\nshower: {{ size: {size} finished }}\n", 101, null, result, code);

    private static void Says(string job, int rule, string? place, Result result, string code)
    {
        var walk = TheBook.Walk(job);
        var check = walk.Checks.Single(one => one.Rule.Number == rule && (place is null || one.Part.Place?.Name == place));
        check.Result.Should().Be(result);

        // Which version applied, and its source, is of the code that was stated.
        var family = code.Split(' ')[0];
        check.Judgement.Sides.Should().ContainSingle();
        check.Judgement.Sides[0].Codes.Select(one => one.Family).Should().Equal(family);
        var entry = walk.Entries.Single(one => one.Checks.Contains(check));
        WhyText.Of(walk, entry, "en", "").Should().MatchRegex($"(?s)Who says +{family}");
    }
}
