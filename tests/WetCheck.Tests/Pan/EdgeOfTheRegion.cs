using WetCheck.Geometry;

namespace WetCheck.Tests.Pan;

/// <summary>
/// At the edge of where a drain may stand the rim has one height; inside it has room, outside none. The edge against
/// halving.
/// </summary>
public sealed class EdgeOfTheRegion
{
    [Theory]
    [InlineData(FallMeasure.Valley, 21)]
    [InlineData(FallMeasure.Square, 22)]
    public void The_window_of_the_rim_closes_at_the_edge(FallMeasure measure, int seed)
    {
        var random = new Random(seed);
        var limits = new FallLimits(1 / 48d, 1 / 24d, measure);
        for (var floors = 0; floors < Depth.Of(daily: 50, deep: 250, night: 2500);)
        {
            var (outline, _) = random.Next(2) == 0 ? RandomRooms.Convex(random) : RandomRooms.Star(random);
            var grate = random.Next(2) == 0 ? Grate.Point : Grate.Square(1.5);
            if (DrainRegion.Of(outline, grate, limits) is not { } region || Outline.AreaOf(region.Edge) < 0.01)
            {
                continue;
            }

            floors++;
            for (var ray = 0; ray < 7; ray++)
            {
                var (sin, cos) = Math.SinCos(random.NextDouble() * Math.Tau);
                var way = new PlanPoint(cos, sin);
                var edge = region.EdgeAlong(way);
                Room(region.Middle + (way * edge)).Should().BeApproximately(0, 1e-6);
                Room(region.Middle + (way * edge * 0.9)).Should().BePositive();
                Room(region.Middle + (way * edge * 1.1)).Should().BeNegative();

                var (within, outside) = (0.0, edge * 2);
                for (var step = 0; step < 80; step++)
                {
                    var half = (within + outside) / 2;
                    (within, outside) = Room(region.Middle + (way * half)) >= 0 ? (half, outside) : (within, half);
                }

                edge.Should().BeApproximately(within, 1e-9 * Math.Max(1, within));
            }

            // Shares of the most, from the outline and the grate alone.
            double Room(PlanPoint drain)
            {
                if (!outline.IsSeenWholeFrom(drain) || outline.Walls.Any(wall => Geometry.Pan.Run(wall, drain, grate) <= 0))
                {
                    return -1;
                }

                var (least, most) = new Geometry.Pan(outline, drain, grate).RimWindow(limits);
                return (most - least) / most;
            }
        }
    }
}
