using WetCheck.Geometry;

namespace WetCheck.Tests.Tile;

/// <summary>Steps of tile over folds, against figures worked out by hand and a fit by sums over a raster.</summary>
public sealed class TileOnFolds
{
    private static readonly List<Facet> s_floor =
        [.. PanFacets.Of(new Geometry.Pan(Outline.Rectangle(60, 36), new(30, 18), Grate.Point), 0.72887)];

    /// <summary>
    /// Worst of any two neighbours over all shifts, in units of side times half the slopes' difference. By hand: a
    /// third of the way across, 8/27, where the fold is parallel; the others by random shifts.
    /// </summary>
    [Theory]
    [InlineData(0, 8.0 / 27)]
    [InlineData(10, 0.405)]
    [InlineData(20, 0.495)]
    [InlineData(30, 0.585)]
    [InlineData(30.96, 0.590)]
    [InlineData(35, 0.602)]
    [InlineData(40, 0.606)]
    [InlineData(45, 0.602)]
    public void A_fold_at_an_angle_to_the_joints(double fold, double step) =>
        TileShifts.OnOneFold(fold, 1).Should().BeApproximately(step, 0.003);

    /// <summary>
    /// By hand: a diagonal fold lifts the corner by 2/3 of half a diagonal times the tangent, against a neighbour the
    /// fold misses. 60x36, valley 1/4 in per ft.
    /// </summary>
    [Theory]
    [InlineData(2, 0.022)]
    [InlineData(3, 0.033)]
    [InlineData(4, 0.045)]
    [InlineData(6, 0.067)]
    public void A_tile_with_the_fold_on_its_diagonal(double side, double step)
    {
        const double Half = 0.023611;
        List<Facet> floor = [
            new(null, [new(-20, -20), new(20, 20), new(-20, 20)], [0, 0, 40 / Math.Sqrt(2) * Half]),
            new(null, [new(-20, -20), new(20, -20), new(20, 20)], [0, 40 / Math.Sqrt(2) * Half, 0])];
        var tile = LaidTile.On(floor, new TileGrid(side, side, 0, default, 0), 0, 0)!;
        (side / Math.Sqrt(2) * Half - tile.HeightAt(new(side, 0))).Should().BeApproximately(step, 6e-4);
        tile.Gap.Should().BeApproximately(side / Math.Sqrt(2) * Half, 1e-9);
        tile.Planes.Should().Be(2);
    }

    /// <summary>Computed apart by random shifts of the whole pan: best and worst.</summary>
    [Theory]
    [InlineData(2, 0.0272, 0.0279)]
    [InlineData(3, 0.0407, 0.0418)]
    [InlineData(4, 0.0543, 0.0557)]
    [InlineData(6, 0.0760, 0.0836)]
    public void All_shifts_of_a_pan(double side, double best, double worst)
    {
        var shifts = TileShifts.Of(s_floor, new TileGrid(side, side, 0, default, 0));
        shifts.Worst.Step.Should().BeApproximately(worst, 0.0008);
        shifts.Best.Step.Should().BeApproximately(best, 0.0012);
    }

    /// <summary>1/32 in and no warp: 2.25 in.</summary>
    [Fact]
    public void The_largest_tile_that_needs_no_cut() =>
        TileShifts.LargestUncut(30.9638, 0.023611, 1.0 / 32).Should().BeApproximately(2.25, 0.03);

    [Fact]
    public void One_plane_has_no_step()
    {
        List<Facet> floor = [new(0, [new(0, 0), new(60, 0), new(60, 36), new(0, 36)], [0, 1, 1.3, 0.3])];
        var misfit = new TileMisfit(floor, new TileGrid(12, 24, 0.125, new(5, 7), 45));
        misfit.WorstStep.Should().Be(0);
        misfit.Tiles.Should().OnlyContain(tile => tile.Gap < 1e-9);
    }

    /// <summary>An independent way: the bed sampled on a raster, each tile fitted by sums.</summary>
    [Theory]
    [InlineData(0, 6)]
    [InlineData(45, 4)]
    [InlineData(20, 5)]
    public void A_real_grid_against_samples(double turned, double side)
    {
        var grid = new TileGrid(side, side, 0, new(1.3, 2.1), turned);
        var worst = new TileMisfit(s_floor, grid).Worst!;
        Math.Abs(Sampled(worst.Of) - Sampled(worst.Beside)).Should().BeApproximately(worst.Step, 0.002);
        foreach (var other in new TileMisfit(s_floor, grid).Steps.Where((_, at) => at % 7 == 0))
        {
            other.Step.Should().BeLessThanOrEqualTo(worst.Step);
        }

        double Sampled(LaidTile tile)
        {
            const int Fine = 200;
            var corners = grid.Corners(tile.Along, tile.Across);
            var all = (from i in Enumerable.Range(0, Fine)
                       from j in Enumerable.Range(0, Fine)
                       let at = corners[0]
                + ((corners[1] - corners[0]) * ((i + 0.5) / Fine))
                + ((corners[3] - corners[0]) * ((j + 0.5) / Fine))
                       where at.X is > 0 and < 60
                && at.Y is > 0 and < 36
                       select at).ToList();
            double Bed(PlanPoint at) => 0.72887 * Math.Max(Math.Abs(at.X - 30) / 30, Math.Abs(at.Y - 18) / 18);
            var (mx, my, mz) = (all.Average(at => at.X), all.Average(at => at.Y), all.Average(Bed));
            var (xx, xy, yy) =
                (all.Sum(at => (at.X - mx) * (at.X - mx)), all.Sum(at => (at.X - mx) * (at.Y - my)),
                all.Sum(at => (at.Y - my) * (at.Y - my)));
            var (xz, yz) = (all.Sum(at => (at.X - mx) * (Bed(at) - mz)), all.Sum(at => (at.Y - my) * (Bed(at) - mz)));
            var whole = (xx * yy) - (xy * xy);
            return mz + (((xz * yy) - (yz * xy)) / whole * (worst.Place.X - mx)) + (((yz * xx) - (xz * xy)) / whole * (worst.Place.Y - my));
        }
    }
}
