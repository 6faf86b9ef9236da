using WetCheck.Geometry;

namespace WetCheck.Tests.Pan;

/// <summary>
/// Values computed with double precision by programs that share no code with this project, and those of requirements
/// O-05 where it is named.
/// </summary>
public sealed class CheckValues
{
    private const double Grate = 2.125;
    private static readonly FallLimits s_square = new(1 / 48d, 1 / 24d, FallMeasure.Square);
    private static readonly FallLimits s_valley = new(1 / 48d, 1 / 24d, FallMeasure.Valley);

    /// <summary>
    /// Rim, long walls, short walls, valley in inches and inches per foot, the drain in the middle; falls between 1/4
    /// and 1/2.
    /// </summary>
    public static TheoryData<double, double, string, string, double, double, double, double, bool> Rectangles => new()
    {
        { 60, 30, "square", "point", 0.6250, 0.5000, 0.2500, 0.2236, true },
        { 60, 30, "square", "grate", 0.5807, 0.5413, 0.2500, 0.2270, false },
        { 60, 30, "valley", "point", 0.6988, 0.5590, 0.2795, 0.25, false },
        { 60, 30, "valley", "grate", 0.6397, 0.5962, 0.2754, 0.25, false },
        { 60, 32, "square", "point", 0.6250, 0.4688, 0.2500, 0.2206, true },
        { 60, 32, "square", "grate", 0.5807, 0.5023, 0.2500, 0.2238, false },
        { 60, 32, "valley", "point", 0.7083, 0.5312, 0.2833, 0.25, false },
        { 60, 32, "valley", "grate", 0.6487, 0.5610, 0.2793, 0.25, false },
        { 60, 34, "square", "point", 0.6250, 0.4412, 0.2500, 0.2175, true },
        { 60, 34, "square", "grate", 0.5807, 0.4685, 0.2500, 0.2206, true },
        { 60, 34, "valley", "point", 0.7184, 0.5071, 0.2873, 0.25, false },
        { 60, 34, "valley", "grate", 0.6582, 0.5310, 0.2834, 0.25, false },
        { 60, 36, "square", "point", 0.6250, 0.4167, 0.2500, 0.2144, true },
        { 60, 36, "square", "grate", 0.5807, 0.4390, 0.2500, 0.2172, true },
        { 60, 36, "valley", "point", 0.7289, 0.4859, 0.2915, 0.25, true },
        { 60, 36, "valley", "grate", 0.6683, 0.5052, 0.2877, 0.25, false },
    };

    [Theory]
    [MemberData(nameof(Rectangles))]
    public void A_rectangle_with_its_drain_in_the_middle(double width, double depth, string measure, string drain,
        double rim, double onLong, double onShort, double valley, bool within)
    {
        var limits = measure == "square" ? s_square : s_valley;
        var pan = Middle(width, depth, drain == "grate" ? Geometry.Grate.Square(Grate) : Geometry.Grate.Point);
        var least = pan.RimWindow(limits).Least;
        least.Should().BeApproximately(rim, 5e-5);
        (12 * least / pan.Runs[0]).Should().BeApproximately(onLong, 5e-5);
        (12 * least / pan.Runs[1]).Should().BeApproximately(onShort, 5e-5);
        (12 * least / pan.Folds[0]).Should().BeApproximately(valley, 5e-5);
        pan.IsWithin(limits).Should().Be(within);
    }

    [Theory]
    [InlineData("round", 0.685, 0.518)]
    [InlineData("square", 0.668, 0.505)]
    public void A_strainer_counts_by_its_shape(string shape, double rim, double steepest)
    {
        var pan = Middle(60, 36, shape == "round" ? Geometry.Grate.Round(Grate) : Geometry.Grate.Square(Grate));
        var least = pan.RimWindow(s_valley).Least;
        least.Should().BeApproximately(rim, 5e-4);
        (12 * least / pan.Runs.Min()).Should().BeApproximately(steepest, 6e-4);
    }

    /// <summary>Half extents and areas of where a drain may stand.</summary>
    [Theory]
    [InlineData(36, 36, "valley", 0, 3.847, 3.847, 47.7)]
    [InlineData(36, 36, "valley", Grate, 3.392, 3.392, 37.1)]
    [InlineData(36, 36, "square", 0, 6, 6, 144)]
    [InlineData(36, 36, "square", Grate, 5.292, 5.292, 112.0)]
    [InlineData(48, 36, "valley", 0, 6.355, 2.287, 33.3)]
    [InlineData(48, 36, "valley", Grate, 5.621, 1.810, 20.9)]
    [InlineData(48, 36, "square", 0, 8, 6, 128)]
    [InlineData(48, 36, "square", Grate, 7.292, 4.938, 90.8)]
    [InlineData(60, 36, "valley", 0, 1.177, 0.403, 0.95)]
    [InlineData(60, 36, "square", 0, 6, 3, 36)]
    [InlineData(60, 36, "square", Grate, 3.875, 1.938, 15.0)]
    [InlineData(60, 40, "valley", 0, 4.641, 1.535, 14.5)]
    [InlineData(60, 40, "valley", Grate, 3.085, 1.033, 6.45)]
    [InlineData(60, 40, "square", 0, 10, 5, 100)]
    [InlineData(60, 40, "square", Grate, 7.875, 3.938, 62.0)]
    public void Where_a_drain_may_stand(double width, double depth, string measure, double half, double x, double y, double area)
    {
        var region =
            DrainRegion.Of(Outline.Rectangle(width, depth),
            half > 0 ? Geometry.Grate.Square(half) : Geometry.Grate.Point, measure == "square" ? s_square : s_valley)!;
        region.Edge.Max(point => point.X - (width / 2)).Should().BeApproximately(x, 6e-4);
        region.Edge.Max(point => point.Y - (depth / 2)).Should().BeApproximately(y, 6e-4);
        Outline.AreaOf(region.Edge).Should().BeApproximately(area, area * 2e-3 + 0.06);
    }

    /// <summary>
    /// O-05: a run of 48 in at 1/4 in per ft drops 1.00 in (V-Q S23); one of 8 in drops 0.167 to 0.333 in between 1/4
    /// and 1/2 (D).
    /// </summary>
    [Theory]
    [InlineData(48, 1.00, 2.00)]
    [InlineData(8, 0.167, 0.333)]
    public void O05_a_run_drops_so_much(double run, double least, double most)
    {
        var window = Middle(2 * run, 2 * run, Geometry.Grate.Point).RimWindow(s_square);
        window.Least.Should().BeApproximately(least, 5e-4);
        window.Most.Should().BeApproximately(most, 5e-4);
    }

    [Fact]
    public void Where_no_drain_may_stand() =>
        DrainRegion.Of(Outline.Rectangle(60, 36), Geometry.Grate.Square(Grate), s_valley).Should().BeNull();

    [Fact]
    public void Corners_of_the_edge_stand_exactly()
    {
        var region = DrainRegion.Of(Outline.Rectangle(48, 36), Geometry.Grate.Point, s_valley)!;
        region.Edge.Min(point => (point - new PlanPoint(30.355, 18)).Length).Should().BeLessThan(6e-4);
        region.Edge.Min(point => (point - new PlanPoint(24, 20.287)).Length).Should().BeLessThan(6e-4);
    }

    [Theory]
    [InlineData(60, 30, 2.236)]
    [InlineData(60, 32, 2.125)]
    [InlineData(60, 34, 2.028)]
    [InlineData(60, 36, 1.944)]
    [InlineData(48, 36, 1.667)]
    [InlineData(36, 36, 1.414)]
    public void The_best_ratio_of_a_rectangle(double width, double depth, double ratio) =>
        Best(Outline.Rectangle(width, depth)).Ratio.Should().BeApproximately(ratio, 5e-4);

    [Theory]
    [InlineData(12, 1.803, 24)]
    [InlineData(24, 2.539, 18)]
    public void The_best_ratio_of_an_l(double less, double ratio, double at)
    {
        var (place, best) =
            Best(new Outline([new(0, 0), new(60, 0), new(60, 60 - less), new(60 - less, 60 - less), new(60 - less, 60),
            new(0, 60)]));
        best.Should().BeApproximately(ratio, 5e-4);
        (place - new PlanPoint(at, at)).Length.Should().BeLessThan(1e-3);
    }

    [Fact]
    public void The_best_ratio_of_a_neo_angle() => Best(NeoAngle).Ratio.Should().BeApproximately(1.591, 5e-4);

    [Fact]
    public void A_neo_angle_to_a_grate_has_a_plane_of_the_grate_too() =>
        new Geometry.Pan(NeoAngle, new(17, 17), Geometry.Grate.Square(Grate)).Runs.Select(run => 12 * 0.7 / run).Order()
            .Should().SatisfyRespectively(
                slope => slope.Should().BeApproximately(0.445, 5e-4),
                slope => slope.Should().BeApproximately(0.445, 5e-4),
                slope => slope.Should().BeApproximately(0.565, 5e-4),
                slope => slope.Should().BeApproximately(0.565, 5e-4),
                slope => slope.Should().BeApproximately(0.602, 6e-4));

    [Theory]
    [InlineData(48, 36, 12, 18, "valley", 5.645)]
    [InlineData(48, 36, 12, 18, "square", 4.000)]
    [InlineData(60, 40, 30, 14, "valley", 4.465)]
    [InlineData(60, 40, 30, 14, "square", 1.000)]
    public void A_drain_that_stands_elsewhere_has_so_far_to_go(double width, double depth, double x, double y, string measure, double far)
    {
        var region = DrainRegion.Of(Outline.Rectangle(width, depth), Geometry.Grate.Point, measure == "square" ? s_square : s_valley)!;
        (region.Nearest(new(x, y)) - new PlanPoint(x, y)).Length.Should().BeApproximately(far, 6e-4);
    }

    [Theory]
    [InlineData(60, 30, 0, 0.0749)]
    [InlineData(60, 32, 0, 0.0420)]
    [InlineData(60, 34, 0, 0.0101)]
    [InlineData(60, 30, Grate, 0.1054)]
    [InlineData(60, 32, Grate, 0.0717)]
    [InlineData(60, 34, Grate, 0.0388)]
    [InlineData(60, 36, Grate, 0.0069)]
    public void A_rim_that_dips_so_much_will_do(double width, double depth, double half, double dip) =>
        RimDip.Of(Middle(width, depth, half > 0 ? Geometry.Grate.Square(half) : Geometry.Grate.Point),
            s_valley)!.Dip.Should().BeApproximately(dip, 6e-5);

    private static Outline NeoAngle { get; } = new([new(0, 0), new(38, 0), new(38, 20), new(20, 38), new(0, 38)]);

    private static (PlanPoint Place, double Ratio) Best(Outline outline) =>
        new Strain(outline, Geometry.Grate.Point, FallMeasure.Valley).Best();

    private static Geometry.Pan Middle(double width, double depth, Grate grate) =>
        new(Outline.Rectangle(width, depth), new(width / 2, depth / 2), grate);
}
