using WetCheck.Model;
using static WetCheck.Tests.Pan.FloorOfAJob;

namespace WetCheck.Tests.Heights;

/// <summary>
/// A size to the studs less what goes on them. Worked out by hand: 1/2 in board, 3/32 in mortar and 5/16 in tile are 29/32 in a wall, so
/// 31-1/2 in between studs finishes at 29-11/16 in, under the 30 in of SG-02; and 40 in deep at most, it never has the
/// 1300 sq in of SG-04 (IRC P2708.1, V-S S03).
/// </summary>
public sealed class FinishedFromTheStuds
{
    private const string Job = "method: liner under mortar\nplumbing code: IRC 2021\nunits: inches\n";

    [Fact]
    public void A_width_loses_both_walls_and_a_depth_one_at_least()
    {
        var lines = Told(Job + "shower: { size: 31-1/2 x 40 to studs }\nwalls: { adds: 29/32 }\n").Json["heights"]!["lines"]!.AsArray();
        Number(lines.Single(line => (string)line!["key"]! == "width")!["height"]).Should().Be(29.6875);
        Number(lines.Single(line => (string)line!["key"]! == "depth")!["most"]).Should().Be(39.09375);
    }

    [Theory]
    [InlineData("31-1/2 x 40 to studs", "walls: { adds: 29/32 }\n", Outcome.Correction)]
    [InlineData("31-1/2 x 40 to studs", "", Outcome.Open)]
    [InlineData("32 x 40 to studs", "walls: { adds: 29/32 }\n", Outcome.Open)]
    [InlineData("31-1/2 x 40 finished", "walls: { adds: 29/32 }\n", Outcome.Ok)]
    public void The_rule_on_size_reads_it(string size, string walls, Outcome outcome) =>
        TheBook.Walk(Job + $"shower: {{ size: {size} }}\n{walls}").Checks.Single(check => check.Rule.Id == "floor/size")
            .Judgement.Now.Should().Be(outcome);
}
