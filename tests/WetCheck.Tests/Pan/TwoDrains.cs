using System.Text.Json.Nodes;
using static WetCheck.Tests.Pan.FloorOfAJob;

namespace WetCheck.Tests.Pan;

/// <summary>
/// A floor with two drains: two parts that share a level ridge, and the rim. Figures computed by programs that share no
/// code with this project.
/// </summary>
public sealed class TwoDrains
{
    /// <summary>60 x 30 with drains at its quarters: rim 0.442 along the folds, the steepest plane 0.354 in per ft.</summary>
    [Fact]
    public void Two_drains_serve_a_floor_that_one_cannot()
    {
        var json = Told(Inches + Rectangle(60, 30, 15, 15) + "  second drain at: 45, 15\n").Json;
        json["ridge"]!.AsArray().Select(end => (Number(end![0]), Number(end[1]))).Should().BeEquivalentTo([(30.0, 0.0), (30.0, 30.0)]);
        foreach (var one in Along(json))
        {
            one["feasible"]!.GetValue<bool>().Should().BeTrue();
            Number(one["rim_window"]![0]).Should().BeApproximately(0.442, 5e-4);
            (Number(one["steepest"]) * Number(one["rim_window"]![0]) / Number(one["height"])).Should().BeApproximately(0.354, 5e-4);
        }

        Case(Told(Inches + Rectangle(60, 30)).Json, "along-folds", "point")["feasible"]!.GetValue<bool>().Should().BeFalse();
    }

    /// <summary>
    /// Worked out by hand: 40 x 20 and 20 x 20 parts; the larger asks for the rim, the smaller caps it at 10 in of 1/2
    /// in per ft.
    /// </summary>
    [Fact]
    public void Parts_of_different_size_share_one_window()
    {
        var windows = Along(Told(Inches + Rectangle(60, 20, 22, 10) + "  second drain at: 48, 10\n").Json)
            .Select(one => (Number(one["rim_window"]![0]), Number(one["rim_window"]![1]))).ToList();
        windows.Should().HaveCount(2).And.OnlyContain(window => window.Equals(windows[0]));
        windows[0].Item1.Should().BeApproximately(Math.Sqrt((22 * 22) + (10 * 10)) / 48, 1e-6);
        windows[0].Item2.Should().BeApproximately(10 / 24.0, 1e-6);
    }

    [Fact]
    public void A_second_drain_off_the_floor_is_named_on_its_own_line()
    {
        var json = Told(Inches + Rectangle(60, 30, 15, 15) + "  second drain at: 70, 15\n").Json;
        json["missing"]!.AsArray().Select(one => ((string)one!["kind"]!, (string)one["line"]!)).Should()
            .Contain(("drain-outside", "shower.second drain at"));
        json["cases"]!.AsArray().Should().OnlyContain(one => one!["part"] == null);
    }

    private static IEnumerable<JsonNode> Along(JsonNode json) =>
        json["cases"]!.AsArray().Select(one => one!).Where(one => (string)one["measure"]! == "along-folds");
}
