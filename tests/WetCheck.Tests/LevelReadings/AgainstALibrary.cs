using NetTopologySuite.Geometries;
using NetTopologySuite.Triangulate;
using WetCheck.Geometry;

namespace WetCheck.Tests.LevelReadings;

/// <summary>Triangles and bounds against NetTopologySuite and against all pairs.</summary>
public sealed class AgainstALibrary
{
    [Fact]
    public void Triangles_of_random_points_are_those_of_the_library()
    {
        var random = new Random(61);
        for (var trial = 0; trial < 60; trial++)
        {
            var points =
                Enumerable.Range(0, 3 + random.Next(120))
                .Select(_ =>
                new PlanPoint(Math.Round(60 * random.NextDouble(), 4), Math.Round(36 * random.NextDouble(), 4)))
                .Distinct().ToList();
            Sorted(Mine(points)).Should().Equal(Sorted(Theirs(points)));
        }
    }

    /// <summary>
    /// On a grid four points lie on one circle, so either diagonal will do: then the areas and the empty circles are
    /// compared.
    /// </summary>
    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    public void Triangles_of_a_grid_cover_it_once(double step)
    {
        var points = Floors.Grid(step).WithDrain();
        var mine = Mine(points);
        mine.Sum(one => one.Area).Should().BeApproximately(Theirs(points).Sum(one => one.Area), 1e-9);
        mine.Should().HaveCount(Theirs(points).Count);
        foreach (var triangle in mine)
        {
            var circle =
                NetTopologySuite.Geometries.Triangle.Circumcentre(triangle.Coordinates[0], triangle.Coordinates[1],
                triangle.Coordinates[2]);
            var radius = circle.Distance(triangle.Coordinates[0]);
            points.Should().OnlyContain(point => circle.Distance(new Coordinate(point.X, point.Y)) > radius - 1e-9);
        }
    }

    [Fact]
    public void Points_in_one_line_have_no_triangles()
    {
        Mine([new(0, 0), new(6, 6), new(12, 12)]).Should().BeEmpty();
        Mine([new(0, 0), new(0, 6)]).Should().BeEmpty();
    }

    /// <summary>The polygon of slopes is what all pairs of points leave, and no plane within the half marks lies outside it.</summary>
    [Fact]
    public void Slopes_left_by_the_pairs_that_bind_are_those_left_by_all_pairs()
    {
        var random = new Random(62);
        for (var trial = 0; trial < 100; trial++)
        {
            var slope = new PlanPoint((random.NextDouble() - 0.5) / 10, (random.NextDouble() - 0.5) / 10);
            var points =
                Enumerable.Range(0, 12).Select(_ => new PlanPoint(60 * random.NextDouble(), 36 * random.NextDouble()))
                .Read(slope.Dot, 1 / 16d, random.NextDouble());
            var polygon = GradientPolygon.Of(points);
            for (var way = 0; way < 16; way++)
            {
                var u = new PlanPoint(Math.Cos(way), Math.Sin(way));
                foreach (var corner in polygon.Corners)
                {
                    points.SelectMany(_ => points,
                        (one, other) =>
                        corner.Dot(one.At - other.At) - (one.Height - other.Height + one.Half + other.Half)).Max()
                        .Should().BeLessThan(1e-9);
                }

                slope.Dot(u).Should().BeInRange(polygon.Along(u).Least - 1e-9, polygon.Along(u).Most + 1e-9);
            }

            // Pushed a hair past an edge, some pair fails: the polygon is not too small.
            for (var edge = 0; edge < polygon.Corners.Count; edge++)
            {
                var (from, to) = (polygon.Corners[edge], polygon.Corners[(edge + 1) % polygon.Corners.Count]);
                if ((to - from).Length > 1e-6)
                {
                    var past = ((from + to) * 0.5) - ((to - from).Unit.Turned * 1e-6);
                    points.SelectMany(_ => points,
                        (one, other) =>
                        past.Dot(one.At - other.At) - (one.Height - other.Height + one.Half + other.Half)).Max()
                        .Should().BePositive();
                }
            }
        }
    }

    [Fact]
    public void Contours_of_a_cone_are_rings_of_its_radius()
    {
        var middle = new PlanPoint(30, 30);
        var points = Floors.Grid(1, 60, 60).Read(at => (at - middle).Length / 48, 0);
        var lines = Contours.Of(new LevelSurface(points, Outline.Rectangle(60, 60)), 0, 0.125)
            .Where(line => line.Height is > 0.2 and < 0.6).ToList();
        lines.Should().HaveCount(3);
        foreach (var (height, line) in lines)
        {
            line[0].Should().Be(line[^1], "it is closed");
            line.Should().OnlyContain(at => Math.Abs((at - middle).Length - (48 * height)) < 0.05);
        }
    }

    private static List<Polygon> Mine(List<PlanPoint> points)
    {
        var corners = new Delaunay(points).Corners;
        return [.. Enumerable.Range(0, corners.Count / 3)
            .Select(at => Of([.. Enumerable.Range(3 * at, 3).Select(one => points[corners[one]])]))];
    }

    private static List<Polygon> Theirs(List<PlanPoint> points)
    {
        var builder = new DelaunayTriangulationBuilder();
        builder.SetSites(points.Select(point => new Coordinate(point.X, point.Y)).ToArray());
        return [.. ((GeometryCollection)builder.GetTriangles(GeometryFactory.Default)).Geometries.Cast<Polygon>()];
    }

    private static Polygon Of(PlanPoint[] corners) =>
        GeometryFactory.Default.CreatePolygon([.. corners.Append(corners[0]).Select(at => new Coordinate(at.X, at.Y))]);

    private static List<string> Sorted(IEnumerable<Polygon> triangles) =>
        [.. triangles.Select(one =>
            string.Join(' ',
            one.Coordinates.Take(3).Select(at => $"{at.X:0.0000},{at.Y:0.0000}").Order(StringComparer.Ordinal)))
            .Order(StringComparer.Ordinal)];
}
