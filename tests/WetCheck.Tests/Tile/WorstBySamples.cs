using WetCheck.Geometry;

namespace WetCheck.Tests.Tile;

/// <summary>
/// The worst step of a whole grid, found a second time by code of the test alone: the bed on a raster, each tile fitted
/// by sums, all neighbours.
/// </summary>
public sealed class WorstBySamples
{
    private const double Rim = 0.72887;
    private const double Raster = 0.05;

    [Theory]
    [InlineData(4, 0, 1.3, 2.1)]
    [InlineData(6, 0, 0.4, 3.7)]
    [InlineData(5, 30, 2, 1)]
    public void It_is_the_same_step(double side, double turned, double x, double y)
    {
        var floor = PanFacets.Of(new Geometry.Pan(Outline.Rectangle(60, 36), new(30, 18), Grate.Point), Rim).ToList();
        new TileMisfit(floor, new TileGrid(side, side, 0, new(x, y), turned)).WorstStep.Should()
            .BeApproximately(Sampled(side, turned * Math.PI / 180, x, y), 0.0025);
    }

    private static double Bed(double x, double y) => Rim * Math.Max(Math.Abs(x - 30) / 30, Math.Abs(y - 18) / 18);

    private static double Sampled(double side, double turn, double fromX, double fromY)
    {
        var (cos, sin) = (Math.Cos(turn), Math.Sin(turn));
        var tiles = new Dictionary<(int, int), List<(double X, double Y, double Z)>>();
        for (var x = Raster / 2; x < 60; x += Raster)
        {
            for (var y = Raster / 2; y < 36; y += Raster)
            {
                var (along, across) =
                    ((((x - fromX) * cos) + ((y - fromY) * sin)) / side,
                    (((y - fromY) * cos) - ((x - fromX) * sin)) / side);
                var tile = ((int)Math.Floor(along), (int)Math.Floor(across));
                if (!tiles.TryGetValue(tile, out var points))
                {
                    tiles[tile] = points = [];
                }

                points.Add((x, y, Bed(x, y)));
            }
        }

        var planes = tiles.Where(tile => tile.Value.Count > 40).ToDictionary(tile => tile.Key, tile => Fit(tile.Value));
        var worst = 0.0;
        foreach (var ((a, b), plane) in planes)
        {
            foreach (var (next, ends) in new[] { ((a + 1, b), new[] { (a + 1.0, (double)b), (a + 1.0, b + 1.0) }),
                ((a, b + 1), [((double)a, b + 1.0), (a + 1.0, b + 1.0)]) })
            {
                if (planes.TryGetValue(next, out var beside) && (plane.IsBent || beside.IsBent))
                {
                    // Along the joint, as far as it lies on the floor; a step is greatest at an end of that, or at a fold.
                    for (var part = 0; part <= 100; part++)
                    {
                        var (u, v) =
                            (ends[0].Item1 + ((ends[1].Item1 - ends[0].Item1) * part / 100),
                            ends[0].Item2 + ((ends[1].Item2 - ends[0].Item2) * part / 100));
                        var (x, y) = (fromX + (side * ((u * cos) - (v * sin))), fromY + (side * ((u * sin) + (v * cos))));
                        if (x is >= 0 and <= 60 && y is >= 0 and <= 36)
                        {
                            worst = Math.Max(worst, Math.Abs(plane.At(x, y) - beside.At(x, y)));
                        }
                    }
                }
            }
        }

        return worst;
    }

    private static (Func<double, double, double> At, bool IsBent) Fit(List<(double X, double Y, double Z)> points)
    {
        var (mx, my, mz) = (points.Average(at => at.X), points.Average(at => at.Y), points.Average(at => at.Z));
        var (xx, xy, yy) =
            (points.Sum(at => (at.X - mx) * (at.X - mx)), points.Sum(at => (at.X - mx) * (at.Y - my)),
            points.Sum(at => (at.Y - my) * (at.Y - my)));
        var (xz, yz) = (points.Sum(at => (at.X - mx) * (at.Z - mz)), points.Sum(at => (at.Y - my) * (at.Z - mz)));
        var whole = (xx * yy) - (xy * xy);
        var (sx, sy) = (((xz * yy) - (yz * xy)) / whole, ((yz * xx) - (xz * xy)) / whole);
        double At(double x, double y) => mz + (sx * (x - mx)) + (sy * (y - my));
        return (At, points.Exists(at => Math.Abs(At(at.X, at.Y) - at.Z) > 1e-6));
    }
}
