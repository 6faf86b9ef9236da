using WetCheck.Geometry;
using WetCheck.Model;

namespace WetCheck.Tests.LevelReadings;

/// <summary>Floors that keep to the limits are never a fault, however coarsely they are read; floors far enough past them always are.
/// Figures: worked out apart from this project, by half-planes of all pairs; they hold by drawing datums at random, so
/// to about a hundredth.</summary>
public sealed class PerfectFloors
{
    private const double Least = 1 / 48d;
    private const double Most = 1 / 24d;

    /// <summary>Outer range over 60 datums: on the 60 in walls, on the 36 in walls, along the folds, in per ft.</summary>
    [Theory]
    [InlineData(3, 1 / 16d, 0.417, 0.542, 0.250, 0.300, 0.214, 0.257)]
    [InlineData(6, 1 / 16d, 0.417, 0.542, 0.250, 0.313, 0.214, 0.268)]
    [InlineData(12, 1 / 16d, 0.417, 0.542, 0.250, 0.325, 0.214, 0.279)]
    [InlineData(3, 1 / 32d, 0.458, 0.521, 0.286, 0.297, 0.245, 0.255)]
    [InlineData(12, 1 / 32d, 0.458, 0.521, 0.275, 0.313, 0.236, 0.268)]
    public void Bounds_of_a_perfect_pan_hold_the_truth_and_are_as_wide_as_worked_out(
        double grid, double mark, double longLeast, double longMost, double shortLeast, double shortMost, double foldLeast, double foldMost)
    {
        var wide = new[] { new Widest(), new Widest(), new Widest() };
        foreach (var told in Told(0.25, grid, mark, 60))
        {
            told.Walls.Concat(told.Folds).Should()
                .NotContain(fall => fall.AtLeast(Least) == LevelVerdict.Correction
                || fall.AtMost(Most) == LevelVerdict.Correction);
            wide[0].Take([told.Walls[0], told.Walls[2]], 0.25 * Floors.Valley / 18);
            wide[1].Take([told.Walls[1], told.Walls[3]], 0.25 * Floors.Valley / 30);
            wide[2].Take(told.Folds, 0.25);
        }

        const double drawn = 0.012;
        wide[0].Should(longLeast, longMost, drawn);
        wide[1].Should(shortLeast, shortMost, drawn);
        wide[2].Should(foldLeast, foldMost, drawn);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(6)]
    [InlineData(12)]
    public void A_perfect_pan_read_exactly_is_no_fault_and_has_no_low_spot(double grid)
    {
        foreach (var told in Told(0.25, grid, 0, 60))
        {
            told.Walls.Concat(told.Folds).Should()
                .OnlyContain(fall => fall.AtLeast(Least) <= LevelVerdict.AtTheLimit
                && fall.AtMost(Most) <= LevelVerdict.AtTheLimit);
        }
    }

    [Theory]
    [InlineData(3, 0)]
    [InlineData(6, 0)]
    [InlineData(12, 0)]
    [InlineData(3, 1 / 16d)]
    [InlineData(6, 1 / 16d)]
    [InlineData(12, 1 / 16d)]
    public void A_perfect_pan_has_no_low_spot_hump_or_hollow(double grid, double mark)
    {
        var random = new Random(31);
        for (var trial = 0; trial < 60; trial++)
        {
            var points = Floors.Grid(grid).WithDrain().Read(Floors.Falling(0.25), mark, random.NextDouble());
            var surface = new LevelSurface(points, Floors.Pan);
            LowSpots.Of(surface, [points.ToList().FindIndex(point => point.At == Floors.Drain)]).Should()
                .NotContain(spot => spot.IsCertain);
            Floors.Facets().Of(points).SelectMany(facet => Bumps.Of(facet, surface)).Should().BeEmpty();
        }
    }

    /// <summary>Worked out apart from this project: proved short in 30 of 30 on every grid.</summary>
    [Theory]
    [InlineData(3)]
    [InlineData(6)]
    [InlineData(12)]
    public void A_pan_that_falls_0_21_along_the_folds_is_proved_short(double grid)
    {
        foreach (var told in Told(0.21, grid, 1 / 16d, 30))
        {
            told.Folds.Should().Contain(fall => fall.AtLeast(Least) == LevelVerdict.Correction);
            told.Folds.Should().OnlyContain(fall => fall.Least <= 0.21 / 12 && fall.Most >= 0.21 / 12);
        }
    }

    /// <summary>Worked out apart from this project: outer ranges 0.297 to 0.304, 0.292 to 0.313, 0.288 to 0.313.</summary>
    [Theory]
    [InlineData(3, 0.297, 0.304)]
    [InlineData(6, 0.292, 0.313)]
    [InlineData(12, 0.288, 0.313)]
    public void A_plane_to_a_channel_is_no_fault(double grid, double least, double most)
    {
        var random = new Random(32);
        var wide = new Widest();
        foreach (var mark in new[] { 0, 1 / 16d })
        {
            for (var trial = 0; trial < 60; trial++)
            {
                var points = Floors.Grid(grid).Read(at => 0.3 / 12 * at.X, mark, random.NextDouble());
                var fall = FacetLevels.Of(1, points, [.. Enumerable.Range(0, points.Count)]).Along(new PlanPoint(1, 0))!;
                fall.AtLeast(Least).Should().Be(LevelVerdict.Ok);
                fall.AtMost(Most).Should().Be(LevelVerdict.Ok);
                wide.Take([fall], 0.3);
                LowSpots.Of(new LevelSurface(points, Floors.Pan),
                    Enumerable.Range(0, points.Count).Where(at => points[at].At.X == 0)).Should().BeEmpty();
            }
        }

        wide.Should(least, most, 0.006);
    }

    [Fact]
    public void Bounds_shrink_with_every_point()
    {
        var random = new Random(33);
        var points = Floors.Grid(3).Read(at => 0.3 / 12 * at.Y, 1 / 16d, 0.4).OrderBy(_ => random.Next()).ToList();
        var before = (Least: double.NegativeInfinity, Most: double.PositiveInfinity);
        for (var count = 3; count <= points.Count; count += 7)
        {
            var now = GradientPolygon.Of(points[..count]).Along(new PlanPoint(0, 1));
            now.Least.Should().BeGreaterThanOrEqualTo(before.Least - 1e-9);
            now.Most.Should().BeLessThanOrEqualTo(before.Most + 1e-9);
            before = now;
        }
    }

    private static IEnumerable<(IReadOnlyList<FallBounds> Walls, IReadOnlyList<FallBounds> Folds)> Told(double valley,
        double grid, double mark, int trials)
    {
        var (random, floor) = (new Random(30), Floors.Facets());
        for (var trial = 0; trial < trials; trial++)
        {
            var facets = floor.Of(Floors.Grid(grid).WithDrain().Read(Floors.Falling(valley), mark, random.NextDouble()));
            yield return (
                [.. facets.Select(facet => facet.Along(Floors.Pan.Walls[facet.Wall].Inward * -1)!)],
                [.. Enumerable.Range(0, 4).Select(corner => floor.Fold(corner, facets)!)]);
        }
    }

    /// <summary>In per ft.</summary>
    private sealed class Widest
    {
        private double _least = double.PositiveInfinity;
        private double _most = double.NegativeInfinity;

        public void Take(IEnumerable<FallBounds> falls, double truth)
        {
            foreach (var fall in falls)
            {
                (fall.Least * 12).Should().BeLessThanOrEqualTo(truth + 1e-6);
                (fall.Most * 12).Should().BeGreaterThanOrEqualTo(truth - 1e-6);
                (_least, _most) = (Math.Min(_least, fall.Least * 12), Math.Max(_most, fall.Most * 12));
            }
        }

        public void Should(double least, double most, double within)
        {
            _least.Should().BeApproximately(least, within);
            _most.Should().BeApproximately(most, within);
        }
    }
}
