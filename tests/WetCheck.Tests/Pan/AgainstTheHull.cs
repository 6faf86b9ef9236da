using WetCheck.Geometry;

namespace WetCheck.Tests.Pan;

/// <summary>
/// Planes of a floor against the lower convex hull of rim and grate, by trying every three points; and against rays,
/// where the room is not convex.
/// </summary>
public sealed class AgainstTheHull
{
    private const double Rim = 0.75;

    [Theory]
    [InlineData("point")]
    [InlineData("grate")]
    public void Slopes_of_rooms_without_corners_that_stand_in_are_those_of_the_hull(string drain)
    {
        var random = new Random(14);
        for (var room = 0; room < 500; room++)
        {
            var (outline, at) = RandomRooms.Convex(random);
            var grate = drain == "grate" ? Grate.Square(1 + random.NextDouble(), 90 * random.NextDouble()) : Grate.Point;
            var facets = PanFacets.Of(new Geometry.Pan(outline, at, grate), Rim).ToList();
            var hull = Lower([.. outline.Corners.Select(corner => (corner, Rim)), .. grate.Corners.Select(corner => (corner + at, 0.0))]);
            foreach (var facet in facets)
            {
                hull.Any(slope => (slope - facet.Slope).Length < 1e-9 * facet.Slope.Length).Should()
                    .BeTrue($"room {room} has a plane at {facet.Wall}");
            }

            foreach (var slope in hull.Where(slope => slope.Length > 1e-9))
            {
                facets.Any(facet => (slope - facet.Slope).Length < 1e-9 * slope.Length).Should().BeTrue($"room {room}");
            }
        }
    }

    /// <summary>Height on the way from the drain to the rim grows evenly, whatever the room.</summary>
    [Fact]
    public void Heights_of_rooms_seen_whole_from_the_drain_are_those_of_rays_to_the_rim()
    {
        var random = new Random(15);
        for (var room = 0; room < 500; room++)
        {
            var (outline, drain) = RandomRooms.Star(random);
            var pan = new Geometry.Pan(outline, drain, Grate.Point);
            foreach (var facet in PanFacets.Of(pan, Rim))
            {
                var place = (facet.Corners[0] * 0.5) + (facet.Corners[1] * 0.3) + (facet.Corners[2] * 0.2);
                var height = facet.Slope.Dot(place - drain);
                height.Should().BeApproximately(Rim * (place - drain).Length / ToTheRim(outline, drain, (place - drain).Unit), 1e-9);
            }
        }
    }

    /// <summary>A fold gathers water where the corner is one of the room, and sheds it where the corner stands in.</summary>
    [Fact]
    public void Folds_are_valleys_and_ridges_by_their_corner()
    {
        var random = new Random(16);
        for (var room = 0; room < 200; room++)
        {
            var (outline, drain) = RandomRooms.Star(random);
            for (var corner = 0; corner < outline.Corners.Count; corner++)
            {
                var fold = (outline.Corners[corner] + drain) * 0.5;
                var across = (outline.Corners[corner] - drain).Unit.Turned * 0.01;
                double Height(PlanPoint place) => (place - drain).Length / ToTheRim(outline, drain, (place - drain).Unit);
                var bend = Height(fold + across) + Height(fold - across) - (2 * Height(fold));
                (bend > 0).Should().Be(!outline.IsInsideOut(corner));
            }
        }
    }

    private static double ToTheRim(Outline outline, PlanPoint from, PlanPoint way) => outline.Walls
        .Select(wall =>
            (Far: (wall.From - from).Cross(wall.To - wall.From) / way.Cross(wall.To - wall.From),
            At: (wall.From - from).Cross(way) / way.Cross(wall.To - wall.From)))
        .Where(hit => hit.Far > 0 && hit.At is > -1e-12 and < 1 + 1e-12).Min(hit => hit.Far);

    private static List<PlanPoint> Lower(List<(PlanPoint At, double Height)> points)
    {
        var slopes = new List<PlanPoint>();
        for (var a = 0; a < points.Count; a++)
        {
            for (var b = a + 1; b < points.Count; b++)
            {
                for (var c = b + 1; c < points.Count; c++)
                {
                    var (u, v) = (points[b].At - points[a].At, points[c].At - points[a].At);
                    var det = u.Cross(v);
                    if (Math.Abs(det) < 1e-9)
                    {
                        continue;
                    }

                    var (p, q) = (points[b].Height - points[a].Height, points[c].Height - points[a].Height);
                    var slope = new PlanPoint(((p * v.Y) - (q * u.Y)) / det, ((q * u.X) - (p * v.X)) / det);
                    if (points.All(point => point.Height - points[a].Height - slope.Dot(point.At - points[a].At) > -1e-10))
                    {
                        slopes.Add(slope);
                    }
                }
            }
        }

        return slopes;
    }
}
