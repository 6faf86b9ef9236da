using WetCheck.Geometry;

namespace WetCheck.Tests.Pan;

/// <summary>Values computed by programs that share no code with this project; properties of floors drawn at random.</summary>
public sealed class WaysOutOfAFloor
{
    private static readonly FallLimits s_valley = new(1 / 48d, 1 / 24d, FallMeasure.Valley);
    private static readonly FallLimits s_square = new(1 / 48d, 1 / 24d, FallMeasure.Square);
    private static readonly Outline s_l = new([new(0, 0), new(60, 0), new(60, 24), new(24, 24), new(24, 60), new(0, 60)]);

    [Fact]
    public void A_floor_too_long_dips_its_rim_or_changes_its_drain()
    {
        var ways = WaysOut.Of(Outline.Rectangle(60, 30), new(30, 15), Grate.Point, s_valley);
        ways.Select(way => way.GetType()).Should().Equal(typeof(WayOut.DipRim), typeof(WayOut.OnePlane), typeof(WayOut.TwoDrains));
        ways.OfType<WayOut.DipRim>().Single().Rim.Dip.Should().BeApproximately(0.0749, 6e-5);
        var plane = ways.OfType<WayOut.OnePlane>().Single();
        (plane.Depth, plane.RimLeast).Should().Be((30, 0.625));
        var two = ways.OfType<WayOut.TwoDrains>().Single();
        two.Rim.Should().BeApproximately(0.442, 5e-4);
        (12 * two.Steepest).Should().BeApproximately(0.354, 5e-4);
        two.Drains.Select(drain => drain.X).Order().Should()
            .SatisfyRespectively(x => x.Should().BeApproximately(15, 1e-6), x => x.Should().BeApproximately(45, 1e-6));
    }

    [Fact]
    public void A_drain_in_the_wrong_place_moves_first() =>
        WaysOut.Of(Outline.Rectangle(48, 36), new(12, 18), Grate.Point, s_square).OfType<WayOut.MoveDrain>().Single()
            .By.Should().BeApproximately(4, 1e-6);

    /// <summary>
    /// An L with legs of 24, the drain far out in one: the way to the far corner bends at the inner one and is 70.10
    /// long, a rise of 1.460.
    /// </summary>
    [Fact]
    public void Where_the_drain_cannot_see_a_wall_the_way_goes_round_the_corner()
    {
        ShortestWays.To(s_l, new(48, 12))[5].Should().BeApproximately(70.10, 5e-3);
        var constant = WaysOut.Of(s_l, new(48, 12), Grate.Point, s_valley).OfType<WayOut.ConstantFall>().Single();
        constant.RimHigh.Should().BeApproximately(1.460, 5e-4);
        constant.RimLow.Should().BeApproximately(12 / 48d, 1e-9);
    }

    /// <summary>Every plane of the split floor from its three points, and every path from a corner, within the limits.</summary>
    [Fact]
    public void A_split_floor_keeps_within_its_limits()
    {
        var limits = s_square with { Most = 1 / 12d };
        var (drain, corners) =
            (new PlanPoint(42, 18),
            new PlanPoint[] { new(0, 0), new(60, 0), new(60, 36), new(36, 36), new(36, 60), new(0, 60) });
        var split = WaysOut.Of(new Outline(corners), drain, Grate.Point, limits).OfType<WayOut.Split>().Single();
        split.LowHeight.Should().BeApproximately((split.Low - drain).Length / 48, 1e-12);
        split.Line.From.Y.Should().Be(split.Line.To.Y).And.Be(36);
        foreach (var (a, b, to, height) in new[]
        {
            (corners[0], corners[1], drain, 0.0), (corners[1], corners[2], drain, 0.0), (corners[5], corners[0], drain, 0.0),
            (corners[3], corners[4], split.Low, split.LowHeight), (corners[4], corners[5], split.Low, split.LowHeight),
                (corners[5], new(0, 36), split.Low, split.LowHeight),
        })
        {
            new Facet(null, [a, b, to], [split.Rim, split.Rim, height]).Slope.Length.Should()
                .BeInRange(limits.Least - 1e-12, limits.Most + 1e-12);
        }
    }

    [Fact]
    public void A_cut_leaves_two_floors_that_are_the_whole()
    {
        var random = new Random(19);
        for (var room = 0; room < 200; room++)
        {
            var (outline, _) = RandomRooms.Star(random);
            var cuts = Enumerable.Range(0, outline.Corners.Count).Where(outline.IsInsideOut)
                .SelectMany(corner => FloorCut.FromCorner(outline, corner)).Append(FloorCut.Across(outline))
                .OfType<FloorCut>();
            foreach (var cut in cuts)
            {
                cut.Parts.Sum(part => part.Area).Should().BeApproximately(outline.Area, 1e-9 * outline.Area);
            }
        }
    }

    /// <summary>The dip against heights tried by brute force on a grid of a hundredth: none does with less.</summary>
    [Theory]
    [InlineData(60, 30)]
    [InlineData(60, 32)]
    [InlineData(60, 34)]
    public void No_rim_dips_less(double width, double depth)
    {
        var found = RimDip.Of(new Geometry.Pan(Outline.Rectangle(width, depth), new(width / 2, depth / 2), Grate.Point), s_valley)!.Dip;
        var (w, d) = (width / 2, depth / 2);
        var corner = Math.Sqrt((w * w) + (d * d)) / 48;
        var best = double.PositiveInfinity;

        // By symmetry one corner height, one foot on the long walls and one on the short.
        for (var h = corner; h < corner + 0.2; h += 0.0005)
        {
            for (var foot = corner - 0.2; foot <= h; foot += 0.0005)
            {
                var slope = Math.Sqrt(Math.Pow(foot / d, 2) + Math.Pow((h - foot) / w, 2));
                if (foot / d >= 1 / 48d && slope <= 1 / 24d)
                {
                    best = Math.Min(best, h - foot);
                }
            }
        }

        found.Should().BeInRange(best - 0.001, best + 1e-9);
    }
}
