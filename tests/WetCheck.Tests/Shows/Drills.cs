using WetCheck.Model;
using static WetCheck.Tests.Pan.FloorOfAJob;

namespace WetCheck.Tests.Shows;

/// <summary>Faults laid out for a helper to find, as readings: found, and nothing else. Limits: IRC P2709.1 and P2709.3, LN-05 and LN-09.</summary>
public sealed class Drills
{
    private const string Liner = "method: liner under mortar\nunits: inches\nplumbing code: IRC 2021\n";
    private const string Floor = Liner + "floor: { rim: 11/16, judged: along any path, figure: inches }\n";

    /// <summary>R-03: the rim of the liner 1/8 in above the flange over 30 in: 0.05 in per ft.</summary>
    [Fact]
    public void R03_a_flat_liner()
    {
        var walk = TheBook.Walk(Liner + "liner falls: { left: 1/8 over 30, right: 5/8 over 30 }\n");
        walk.ToFix.Select(entry => entry.Number).Should().Equal("132-B");
    }

    /// <summary>R-04: 60 x 30, drain in the middle, rim 11/16: 0.246 in per ft along the folds is short, 0.55 across is steep (O-05, C-22).</summary>
    [Fact]
    public void R04_both_limits_at_once()
    {
        var walk = TheBook.Walk(Floor + Rectangle(60, 30));
        walk.ToFix.Select(entry => entry.Rule.Number).Distinct().Should().Equal(134);

        // Short by less than the tape can tell: read once, it is read again.
        walk.Checks.Where(check => check.Rule.Number == 135).Should().OnlyContain(check => check.Result == Result.ReadAgain);
        var one = Case(Told(Inches + Rectangle(60, 30)).Json, "along-folds", "point");
        one["feasible"]!.GetValue<bool>().Should().BeFalse();
        var scale = 0.6875 / Number(one["height"]);
        (Slope(one, "back") * scale).Should().BeApproximately(0.55, 5e-4);
        (Number(one["flattest"]) * scale).Should().BeApproximately(0.246, 5e-4);
        one["ways_out"]!.AsArray().Should().NotBeEmpty();
    }

    /// <summary>Their look-alikes: a liner that falls 5/8 in over 30 in, and 60 x 36 with its rim at 3/4 in, which is the limit itself (F-18).</summary>
    [Theory]
    [InlineData(Liner + "liner falls: { left: 5/8 over 30, right: 5/8 over 30 }\n")]
    [InlineData(Liner + "floor: { rim: 3/4, judged: along any path, figure: inches }\nshower:\n  size: 60 x 36 finished\n  drain at: 30, 18\n")]
    public void What_looks_like_them_and_is_right_stays_silent(string job) => TheBook.Walk(job).ToFix.Should().BeEmpty();
}
