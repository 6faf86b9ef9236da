using static WetCheck.Tests.Pan.FloorOfAJob;

namespace WetCheck.Tests.Pan;

/// <summary>
/// The command against outside figures: requirements O-05 (V-Q S23, V-Q S145, D), user-needs F-17 and F-18 (LN-09), and values computed by
/// programs that share no code with this project.
/// </summary>
public sealed class FallsByCommand
{
    /// <summary>
    /// O-05: 60 x 36, 1/4 in per ft on the fold: rise 0.729, short way 0.486. 60 x 30: 0.699, 0.559, over the most. 36
    /// x 36: 0.530, 0.354.
    /// </summary>
    [Theory]
    [InlineData(60, 36, 0.729, 0.486, true)]
    [InlineData(60, 30, 0.699, 0.559, false)]
    [InlineData(36, 36, 0.530, 0.354, true)]
    public void O05_a_pan_with_its_drain_in_the_middle(double width, double depth, double rise, double steepest, bool feasible)
    {
        var one = Case(Told(Inches + Rectangle(width, depth)).Json, "along-folds", "point");
        var least = Number(one["rim_window"]![0]);
        least.Should().BeApproximately(rise, 5e-4);
        (Slope(one, "back") * least / Number(one["height"])).Should().BeApproximately(steepest, 5e-4);
        one["feasible"]!.GetValue<bool>().Should().Be(feasible);
        (one["ways_out"]!.AsArray().Count > 0).Should().Be(!feasible);
    }

    /// <summary>O-05: 1800 x 900, central waste: 11.25 mm at 1:80 makes the short plane 1:40, where 1:50 is the most.</summary>
    [Fact]
    public void O05_a_long_metric_pan_has_no_level_rim()
    {
        var (code, json, _) = Told(Metric + Rectangle(1800, 900));
        var one = json["cases"]!.AsArray().Single()!;
        (Number(one["rim_window"]![0]) * 25.4).Should().BeApproximately(11.25, 1e-3);
        (12 / Slope(one, "back")).Should().BeApproximately(40, 1e-3);
        (12 / Slope(one, "left")).Should().BeApproximately(80, 1e-3);
        (one["feasible"]!.GetValue<bool>(), one["region"]!.AsArray().Count, code).Should().Be((false, 0, 1));
    }

    /// <summary>O-05: long over short, square to the walls, at most 2 (1/4 to 1/2 in per ft) and 1.6 (1:80 to 1:50).</summary>
    [Theory]
    [InlineData(false, 72, 36, true)]
    [InlineData(false, 72.25, 36, false)]
    [InlineData(true, 1440, 900, true)]
    [InlineData(true, 1445, 900, false)]
    public void O05_how_long_for_its_width(bool metric, double width, double depth, bool feasible) =>
        Case(Told((metric ? Metric : Inches) + Rectangle(width, depth)).Json, "square",
            "point")["feasible"]!.GetValue<bool>().Should().Be(feasible);

    /// <summary>O-05: 1:48 is 1/4 in per ft exactly; the access rule asks it along any way whatever the inspector reads.</summary>
    [Fact]
    public void O05_an_access_standard_reads_along_the_folds()
    {
        var json = Told("units: inches\nplumbing code: IRC 2021\naccess standard: ADA 2010\nfloor: { judged: square "
            + "to the wall, figure: inches }\n" + Rectangle(36, 36)).Json;
        var limits = json["limits"]!.AsArray().Single(one => (string)one!["measure"]! == "along-folds")!;
        Number(limits["least"]).Should().Be(0.25);
        limits["disputed"]!.GetValue<bool>().Should().BeFalse();
        limits["codes"]!.AsArray().Select(code => (string)code!).Should().Equal("ADA");
    }

    /// <summary>Rim, fall on the 60 in walls and on the short ones, fold; computed.</summary>
    [Theory]
    [MemberData(nameof(CheckValues.Rectangles), MemberType = typeof(CheckValues))]
    public void Sixty_wide(double width, double depth, string measure, string drain, double rim, double onLong,
        double onShort, double valley, bool within)
    {
        var one = Case(Told(Inches + Grate + Rectangle(width, depth)).Json, measure == "valley" ? "along-folds" : measure, drain);
        var least = Number(one["rim_window"]![0]);
        var scale = least / Number(one["height"]);
        least.Should().BeApproximately(rim, 5e-5);
        (Slope(one, "back") * scale).Should().BeApproximately(onLong, 6e-5);
        (Slope(one, "left") * scale).Should().BeApproximately(onShort, 6e-5);
        (Number(one["flattest"]) * scale).Should().BeApproximately(valley, 6e-5);
        one["feasible"]!.GetValue<bool>().Should().Be(within);
    }

    /// <summary>Computed: the mark to choose is the lowest sixteenth in the window.</summary>
    [Theory]
    [InlineData(60, 36, 0.75)]
    [InlineData(36, 36, 0.5625)]
    [InlineData(48, 36, 0.625)]
    [InlineData(60, 40, 0.8125)]
    [InlineData(54, 36, 0.6875)]
    public void The_mark_to_choose(double width, double depth, double mark) =>
        Number(Case(Told(Inches + Rectangle(width, depth)).Json, "along-folds", "point")["rim"]).Should().Be(mark);

    /// <summary>F-18: 60 x 36, rim 3/4: 0.500 across the short way is the limit itself, so it fits.</summary>
    [Fact]
    public void F18_on_the_limit_fits()
    {
        var one = Case(Told(Inches + Rectangle(60, 36)).Json, "along-folds", "point");
        (one["feasible"]!.GetValue<bool>(), Number(one["height"]), Number(one["steepest"])).Should().Be((true, 0.75, 0.5));
        Number(one["rim_window"]![1]).Should().BeApproximately(0.75, 1e-6);
    }

    /// <summary>F-17: 42 x 42, corners at 3/4 and 5/8: a level rim at either is within, fold 0.253 or more, sides 0.43 or less.</summary>
    [Fact]
    public void F17_both_heights_are_within_the_window()
    {
        var one = Case(Told(Inches + Rectangle(42, 42)).Json, "along-folds", "point");
        (Number(one["rim_window"]![0]) <= 0.625 && Number(one["rim_window"]![1]) >= 0.75).Should().BeTrue();
        (Number(one["rim"]), Number(one["steepest"]) <= 0.43).Should().Be((0.625, true));
        Number(one["flattest"]).Should().BeApproximately(0.2525, 5e-4);
    }

    /// <summary>Computed: 48 x 36 from (12, 18): 5.645 to (17.645, 18) along the folds, 4 square to the walls.</summary>
    [Theory]
    [InlineData("along-folds", 17.645)]
    [InlineData("square", 16)]
    public void The_nearest_place_and_the_way_there(string measure, double x)
    {
        var one = Case(Told(Inches + Rectangle(48, 36, 12, 18)).Json, measure, "point");
        Number(one["nearest"]![0]).Should().BeApproximately(x, 1e-3);
        Number(one["nearest"]![1]).Should().BeApproximately(18, 1e-3);
        one["ways_out"]!.AsArray().Select(way => Number(way!["cost"])).Should().BeInAscendingOrder();
        one["ways_out"]!.AsArray().Select(way => (string)way!["kind"]!).Should().Contain("move-drain");
    }

    /// <summary>Computed: half extents of the region of 36 x 36, 3.847 along the folds and 6 square.</summary>
    [Theory]
    [InlineData("along-folds", "point", 3.847)]
    [InlineData("along-folds", "grate", 3.392)]
    [InlineData("square", "point", 6)]
    [InlineData("square", "grate", 5.292)]
    public void Where_a_drain_may_stand_is_told_without_one(string measure, string drain, double half)
    {
        var (code, json, _) = Told(Inches + Grate + "shower: { size: 36 x 36 finished }\n");
        var one = Case(json, measure, drain);
        one["feasible"].Should().BeNull();
        (one["region"]!.AsArray().Max(at => Number(at![0])) - 18).Should().BeApproximately(half, 5e-3);
        (code, (string)json["missing"]![0]!["line"]!).Should().Be((3, "shower.drain at"));
    }

    [Fact]
    public void With_no_code_stated_each_that_is_tried_is_named_and_both_figures()
    {
        var json = Told("units: inches\n" + Rectangle(60, 36)).Json;
        var square = json["limits"]!.AsArray().Where(one => (string)one!["measure"]! == "square").ToList();
        square.Select(one => Number(one!["least"])).Should().Equal(0.25, 0.24);
        square.Select(one => (string)one!["held"]![0]!).Should().Equal("inches", "per cent");
        square[0]!["codes"]!.AsArray().Select(code => (string)code!).Should().BeEquivalentTo("IRC", "IPC", "UPC");
        json["limits"]!.AsArray().Where(one => (string)one!["measure"]! == "along-folds").Should()
            .OnlyContain(one => one!["disputed"]!.GetValue<bool>());
    }
}
