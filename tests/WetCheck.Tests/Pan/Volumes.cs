using NetTopologySuite.Geometries;
using WetCheck.Geometry;

namespace WetCheck.Tests.Pan;

/// <summary>Volumes against the closed form, sums over a fine raster, and a general geometry library's areas.</summary>
public sealed class Volumes
{
    [Fact]
    public void To_a_point_it_is_two_thirds_of_area_times_rim()
    {
        var random = new Random(17);
        for (var room = 0; room < 300; room++)
        {
            var (outline, drain) = RandomRooms.Star(random);
            var volume = PanVolume.Of(new Geometry.Pan(outline, drain, Grate.Point), 0.7);
            volume.Should().BeApproximately(outline.Area * 0.7 * 2 / 3, 1e-9 * volume);
        }
    }

    /// <summary>Requirements O-06: 60x36, rim 0.729, no bed below: 0.607 cu ft.</summary>
    [Fact]
    public void A_sloped_fill_of_the_table() =>
        (PanVolume.Of(new Geometry.Pan(Outline.Rectangle(60, 36), new(30, 18), Grate.Point), 0.729) / 1728).Should()
            .BeApproximately(0.6075, 6e-4);

    /// <summary>Geometry check value: to a 4-1/4 in grate 0.632 of area times rim, 5 % less.</summary>
    [Fact]
    public void To_a_grate_it_is_less() =>
        (PanVolume.Of(new Geometry.Pan(Outline.Rectangle(60, 36), new(30, 18), Grate.Square(2.125)), 1) / (60 * 36))
            .Should().BeApproximately(0.632, 1e-3);

    [Theory]
    [InlineData("point")]
    [InlineData("square")]
    [InlineData("turned")]
    [InlineData("round")]
    public void It_is_the_sum_of_many_small_columns(string shape)
    {
        var grate = shape switch
        {
            "square" => Grate.Square(2),
            "turned" => Grate.Square(2, 30),
            "round" => Grate.Round(2),
            _ => Grate.Point
        };
        var outline = new Outline([new(0, 0), new(38, 0), new(38, 20), new(20, 38), new(0, 38)]);
        var pan = new Geometry.Pan(outline, new(17, 17), grate);
        const double Step = 0.25;
        var sum = 0.0;
        for (var x = Step / 2; x < 38; x += Step)
        {
            for (var y = Step / 2; y < 38; y += Step)
            {
                var place = new PlanPoint(x, y);
                if (outline.Contains(place))
                {
                    sum += Height(outline, place - pan.Drain, grate) * Step * Step;
                }
            }
        }

        PanVolume.Of(pan, 1).Should().BeApproximately(sum, sum * 3e-3);

        // The lowest of all ways up from a point of the grate to the rim: height is the share of the way that is left.
        double Height(Outline room, PlanPoint place, Grate to)
        {
            var starts =
                to.Radius > 0
                ? [.. Enumerable.Range(0, 60).Select(at => at * Math.Tau / 60)
                .Select(angle => new PlanPoint(Math.Cos(angle), Math.Sin(angle)) * to.Radius)] : to.Corners;
            var (low, high) = (0.0, 1.0);
            for (var step = 0; step < 24; step++)
            {
                // At height h the level line is the grate drawn out toward the rim: a mix of both shapes.
                var h = (low + high) / 2;
                var within =
                    room.Walls.All(wall => wall.Inward.Dot(place) * -1 <= ((1 - h) * to.Reach(wall.Inward * -1))
                    + (h * wall.Distance(pan.Drain)) + 1e-12)
                    && EdgesOf(starts)
                        .All(edge => edge.Dot(place) <= ((1 - h) * to.Reach(edge))
                        + (h * room.Corners.Max(corner => (corner - pan.Drain).Dot(edge))) + 1e-12);
                (low, high) = within ? (low, h) : (h, high);
            }

            return (low + high) / 2;
        }

        static IEnumerable<PlanPoint> EdgesOf(IReadOnlyList<PlanPoint> ring) => ring.Count < 3
            ? []
            : ring.Select((corner, at) => (ring[(at + 1) % ring.Count] - corner).Unit.Turned * -1);
    }

    [Fact]
    public void Areas_are_those_of_a_general_geometry_library()
    {
        var random = new Random(18);
        for (var room = 0; room < 300; room++)
        {
            var (outline, drain) = RandomRooms.Star(random);
            var ring = outline.Corners.Append(outline.Corners[0]).Select(corner => new Coordinate(corner.X, corner.Y)).ToArray();
            outline.Area.Should().BeApproximately(new Polygon(new LinearRing(ring)).Area, 1e-9 * outline.Area);
            PanFacets.Of(new Geometry.Pan(outline, drain, Grate.Point), 1).Sum(facet => facet.Area).Should()
                .BeApproximately(outline.Area, 1e-9 * outline.Area);
        }
    }
}
