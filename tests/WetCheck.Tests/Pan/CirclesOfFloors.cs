using NetTopologySuite.Algorithm.Construct;
using NetTopologySuite.Geometries;
using WetCheck.Geometry;

namespace WetCheck.Tests.Pan;

/// <summary>The largest circle of a floor against closed forms, a general geometry library and a raster.</summary>
public sealed class CirclesOfFloors
{
    private const double Near = 1e-3;

    [Theory]
    [InlineData(60, 36, 18)]
    [InlineData(30, 30, 15)]
    [InlineData(34.125, 37, 17.0625)]
    public void Half_the_short_side_of_a_rectangle(double wide, double deep, double radius) =>
        InscribedCircle.Of(Outline.Rectangle(wide, deep)).Radius.Should().BeInRange(radius - Near, radius + 1e-9);

    /// <summary>Elementary: a right triangle 30, 40, 50 has the radius (30 + 40 - 50) / 2.</summary>
    [Fact]
    public void Of_a_right_triangle() =>
        InscribedCircle.Of(new Outline([new(0, 0), new(40, 0), new(0, 30)])).Radius.Should().BeInRange(10 - Near, 10 + 1e-9);

    /// <summary>A neo-angle floor 36 x 36 with 18 in fronts: it touches both back walls and the slanted one, so r (2 + √2) = 54.</summary>
    [Fact]
    public void Of_a_neo_angle() =>
        InscribedCircle.Of(new Outline([new(0, 0), new(36, 0), new(36, 18), new(18, 36), new(0, 36)])).Radius.Should()
            .BeInRange((54 / (2 + Math.Sqrt(2))) - Near, (54 / (2 + Math.Sqrt(2))) + 1e-9);

    [Fact]
    public void It_is_that_of_a_general_geometry_library()
    {
        var random = new Random(31);
        for (var room = 0; room < 200; room++)
        {
            var outline = (room % 2 == 0 ? RandomRooms.Star(random) : RandomRooms.Convex(random)).Outline;
            var ring = outline.Corners.Append(outline.Corners[0]).Select(corner => new Coordinate(corner.X, corner.Y)).ToArray();
            var theirs = new MaximumInscribedCircle(new Polygon(new LinearRing(ring)), 1e-3).GetRadiusLine().Length;
            InscribedCircle.Of(outline).Radius.Should().BeApproximately(theirs, 2e-3);
        }
    }

    [Fact]
    public void No_place_of_a_raster_is_farther_from_the_walls()
    {
        var random = new Random(32);
        for (var room = 0; room < 40; room++)
        {
            var outline = RandomRooms.Star(random).Outline;
            var circle = InscribedCircle.Of(outline);
            const double Step = 0.5;
            var most = 0.0;
            for (var x = -50.0; x < 50; x += Step)
            {
                for (var y = -50.0; y < 50; y += Step)
                {
                    if (outline.Contains(new(x, y)))
                    {
                        most = Math.Max(most,
                            Enumerable.Range(0, outline.Corners.Count)
                            .Min(at => ToEdge(outline.CornerAt(at), outline.CornerAt(at + 1), x, y)));
                    }
                }
            }

            circle.Radius.Should().BeInRange(most - Near, most + (Step / Math.Sqrt(2)));
        }
    }

    private static double ToEdge(PlanPoint a, PlanPoint b, double x, double y)
    {
        var share = Math.Clamp((((x - a.X) * (b.X - a.X)) + ((y - a.Y) * (b.Y - a.Y))) / (((b.X - a.X) * (b.X - a.X))
            + ((b.Y - a.Y) * (b.Y - a.Y))), 0, 1);
        return Math.Sqrt(Math.Pow(x - a.X - (share * (b.X - a.X)), 2) + Math.Pow(y - a.Y - (share * (b.Y - a.Y)), 2));
    }
}
