using WetCheck.Geometry;
using static WetCheck.Tests.Pan.FloorOfAJob;

namespace WetCheck.Tests.Pan;

/// <summary>L and neo-angle from their line in the job file. Values computed by programs that share no code with this project.</summary>
public sealed class FloorsThatAreNoRectangle
{
    /// <summary>
    /// L 60 x 60 less 12 x 12, drain (24, 24): farthest over nearest is 1.803, so it fits; less 24 x 24, (18, 18):
    /// 2.539, so not.
    /// </summary>
    [Theory]
    [InlineData("60 x 60 less 12 x 12 at right-back", 24, 1.803, true)]
    [InlineData("60 x 60 less 24 x 24 at right-back", 18, 2.539, false)]
    [InlineData("0,0 60,0 60,36 36,36 36,60 0,60", 18, 2.539, false)]
    [InlineData("38 x 38 clipped 18 x 18 at right-back", 17.9, null, true)]
    public void A_floor_in_short_and_by_its_corners(string outline, double drain, double? ratio, bool feasible)
    {
        var one = Case(Told(Inches + Shower(outline, drain, drain)).Json, "along-folds", "point");
        one["feasible"]!.GetValue<bool>().Should().Be(feasible);
        if (ratio is { } known)
        {
            (2 * Number(one["rim_window"]![0]) / Number(one["rim_window"]![1])).Should().BeApproximately(known, 1e-3);
        }
    }

    [Fact]
    public void A_corner_that_is_left_out_may_be_any_of_the_four()
    {
        foreach (var corner in new[] { "left-back", "right-back", "left jamb", "right jamb" })
        {
            var json = Told(Inches + Shower($"60 x 60 less 24 x 12 at {corner}", 30, 30)).Json;
            json["outline"]!.AsArray().Count.Should().Be(6);
            json["walls"]!.AsArray().Sum(wall => Number(wall!["length"])).Should().Be(240);
        }
    }

    /// <summary>L with legs of 24 in: from (48, 12) to (0, 60) it is 70.10 around (24, 24), so 1.460 at 1/4 in per ft.</summary>
    [Fact]
    public void A_wall_out_of_sight_is_named_with_the_corner_that_hides_it()
    {
        var (code, json, _) = Told(Inches + Shower("60 x 60 less 36 x 36 at right-back", 48, 12));
        var one = Case(json, "along-folds", "point");
        one["hidden"]!.AsArray()
            .Select(hidden => ((string)hidden!["side"]!, Number(hidden["by"]![0]), Number(hidden["by"]![1]))).Should()
            .Equal(("right-1", 24, 24));
        one["rim_window"].Should().BeNull();
        ((string)one["ways_out"]!.AsArray().Single(way => (string)way!["kind"]! == "constant-fall")!["say"]!).Should().Contain("1-29/64\"");
        code.Should().Be(1);
    }

    [Fact]
    public void A_channel_along_a_whole_wall_makes_one_plane()
    {
        var (code, json, _) =
            Told(Inches + Shower("60 x 36", 30, 34)
            + "drain: { form: channel, grate: 4, channel length: 60, channel runs: side to side }\n");
        var one = Case(json, "square", "channel-at-wall");
        (Number(one["rim_window"]![0]), Number(one["rim_window"]![1])).Should().Be((0.666667, 1.333333));
        (Number(one["rim"]), code).Should().Be((0.6875, 0));
    }

    /// <summary>
    /// Worked out by hand: 48 in of channel on a 60 in wall, 32 in deep in front of it. Its corners are 6 in past its
    /// ends: 1/8 in higher at 1/4 in
    /// per ft. The triangle beside it then has 1/4 in per ft along the wall and (H - 1/8)/32 across, 1/2 in all at H =
    /// 1/8 + 32 x 0.43301 / 12.
    /// </summary>
    [Fact]
    public void A_channel_shorter_than_its_wall_leaves_corners_that_stand_higher()
    {
        var json = Told(Inches + Shower("60 x 36", 30, 34)
            + "drain: { form: channel, grate: 4, channel length: 48, channel runs: side to side }\n").Json;
        var one = Case(json, "square", "channel-at-wall");
        one["ends"]!.AsArray().Select(end => ((string)end!["corner"]!, Number(end["far"]), Number(end["height"])))
            .Should().BeEquivalentTo([("left-back", 6.0, 0.125), ("right-back", 6.0, 0.125)]);
        Number(one["rim_window"]![0]).Should().BeApproximately(32 / 48.0, 1e-6);
        Number(one["rim_window"]![1]).Should().BeApproximately(0.125 + (32 * Math.Sqrt(0.1875) / 12), 1e-6);

        // Along the folds the way from a far corner to the channel's end is 32.557 in.
        Number(Case(json, "along-folds", "channel-at-wall")["rim_window"]![0]).Should()
            .BeApproximately(Math.Sqrt((6 * 6) + (32 * 32)) / 48, 1e-6);
        Facet beside = new(null, [new(0, 36), new(6, 32), new(0, 0)], [0.125, 0, Number(one["height"])]);
        beside.Slope.Length.Should().BeLessThan(1 / 24.0);
    }

    [Fact]
    public void In_millimetres_it_is_the_same_floor()
    {
        var metric = Told(Metric + Shower("1524 x 1524 less 609.6 x 609.6 at right-back", 457.2, 457.2)).Json["outline"]!.ToJsonString();
        metric.Should().Be(Told(Inches + Shower("60 x 60 less 24 x 24 at right-back", 18, 18)).Json["outline"]!.ToJsonString());
    }

    private static string Shower(string outline, double x, double y) => string.Create(System.Globalization.CultureInfo.InvariantCulture,
        $"shower:\n  outline: {outline}\n  drain at: {x}, {y}\n");
}
