using WetCheck.Geometry;

namespace WetCheck.Tests.LevelReadings;

/// <summary>Hollows whose ponds are known in closed form. A round hollow with the floor s·x, radius a and depth D·(1 −
/// r²/a²) ponds to the depth
/// D(1 − sa/2D)², a circle of radius a − sa²/2D; worked out by hand: the sum of a plane and a paraboloid is a paraboloid.</summary>
public sealed class HollowsAndLowSpots
{
    private const double Slope = 0.25 / 12;
    private const double Across = 6;
    private const double Deep = 0.25;
    private static readonly double s_pond = Deep * Math.Pow(1 - (Slope * Across / (2 * Deep)), 2);

    [Fact]
    public void The_exact_surface_ponds_as_worked_out_by_hand()
    {
        s_pond.Should().BeApproximately(0.140625, 1e-12);
        var points = Ring(240, 60).Select(at => new LevelPoint(at, Hollow(new PlanPoint(24, 12))(at), 1e-9)).ToList();
        var spot = LowSpots.Of(new LevelSurface(points, Outline.Rectangle(48, 24)), [points.FindIndex(point => point.At.X == 0)]).Single();
        spot.Depth.Should().BeApproximately(0.140625, 1e-4);
        (spot.Area / 63.62).Should().BeApproximately(1, 0.01);
        (spot.Volume / 4.473).Should().BeApproximately(1, 0.01);
        (spot.At - new PlanPoint(24 - 1.5, 12)).Length.Should().BeLessThan(0.11, "it stands sa²/2D downhill");
    }

    /// <summary>Worked out apart from this project, over 300 shifts: 0.086 to 0.125 on 3 in, 0 to 0.125 on 6 in, none on 12 in.</summary>
    [Theory]
    [InlineData(1, 0.12)]
    [InlineData(2, 0.10)]
    [InlineData(3, 0.08)]
    [InlineData(6, 0)]
    [InlineData(12, 0)]
    public void A_hollow_read_on_a_grid_shows_at_most_its_depth(double grid, double least)
    {
        var random = new Random(41);
        foreach (var mark in new[] { 0, 1 / 16d })
        {
            for (var trial = 0; trial < 60; trial++)
            {
                var floor = Hollow(new PlanPoint(24 + (grid * random.NextDouble()), 18 + (grid * random.NextDouble())));
                var points = Floors.Grid(grid, 60, 36).Read(floor, mark, random.NextDouble());
                var spots = LowSpots.Of(new LevelSurface(points, Floors.Pan),
                    Enumerable.Range(0, points.Count).Where(at => points[at].At.X == 0));
                var deepest = spots.Count == 0 ? 0 : spots[0].Depth;
                deepest.Should().BeInRange(Math.Max(0, least - mark), s_pond + mark + 1e-9);
                (spots.Count == 0 ? 0 : spots[0].Least).Should().BeLessThanOrEqualTo(s_pond);
            }
        }
    }

    [Fact]
    public void A_hollow_as_shallow_as_a_mark_ponds_nothing()
    {
        var floor = new Func<PlanPoint,
            double>(at =>
            (Slope * at.X) - Math.Max(0, 1 / 16d * (1 - (Square(at - new PlanPoint(30, 18)) / (Across * Across)))));
        var points = Floors.Grid(1).Read(floor, 0);
        LowSpots.Of(new LevelSurface(points, Floors.Pan),
            Enumerable.Range(0, points.Count).Where(at => points[at].At.X == 0)).Should().BeEmpty();
    }

    /// <summary>A paraboloid bowl in a level floor: half of the cylinder round it.</summary>
    [Fact]
    public void A_bowl_holds_its_volume()
    {
        var floor = new Func<PlanPoint, double>(at => -Math.Max(0, 1 - (Square(at - new PlanPoint(30, 18)) / 144)));
        var points = Floors.Grid(0.5).Read(floor, 0);
        var spot = LowSpots.Of(new LevelSurface(points, Floors.Pan), [0]).Single();
        spot.Depth.Should().Be(1);
        (spot.Volume / (Math.PI * 144 / 2)).Should().BeApproximately(1, 0.01);
        (spot.Area / (Math.PI * 144)).Should()
            .BeApproximately(1, 0.04, "its shore is drawn to the next readings, half an inch at the most");
    }

    /// <summary>
    /// A drill: 3/4, 5/8, 3/8, 1/4, 3/8, 1/4, 0 along one run to the drain: 1/8 stands at the fourth. Worked out by
    /// hand.
    /// </summary>
    [Fact]
    public void A_birdbath_is_found_where_it_stands()
    {
        double[] run = [0.75, 0.625, 0.375, 0.25, 0.375, 0.25, 0];
        var points =
            new[] { 0d, 6, 12 }
            .SelectMany(y =>
            run.Select((height, at) => new LevelPoint(new PlanPoint(36 - (6 * at), y), height, 1 / 64d))).ToList();
        var spot = LowSpots.Of(new LevelSurface(points, Outline.Rectangle(36, 12)),
            Enumerable.Range(0, points.Count).Where(at => points[at].At.X == 0)).Should().ContainSingle().Subject;
        spot.Depth.Should().Be(0.125);
        spot.At.X.Should().Be(18);
        spot.IsCertain.Should().BeTrue();
    }

    [Fact]
    public void A_hollow_makes_its_plane_uneven_and_is_told_with_what_to_add()
    {
        var floor = new Func<PlanPoint,
            double>(at =>
            Floors.Falling(0.25)(at) - Math.Max(0, Deep * (1 - (Square(at - new PlanPoint(12, 18)) / 36))));
        var points = Floors.Grid(3).Read(floor, 1 / 16d, 0.3);
        var left = Floors.Facets().Of(points)[3];
        left.Slopes.IsEmpty.Should().BeTrue();
        left.Alone(points).Should().BeEmpty("several readings tell of the hollow");
        left.Unevenness(points).Should().BeInRange(1 / 32d, 1 / 8d, "half its depth at the most lies off the nearest plane");
        var bump = Bumps.Of(left, new LevelSurface(points, Floors.Pan)).Should().ContainSingle().Subject;
        bump.At.Should().Be(new PlanPoint(12, 18));
        bump.Off.Should().BeApproximately(-Deep, 1 / 16d);
    }

    /// <summary>
    /// Read on a grid of so much, a cone's fall over the next foot is off by at most what straight lines between
    /// readings lie above it: s·h²/4r at each end.
    /// </summary>
    [Theory]
    [InlineData(3)]
    [InlineData(6)]
    [InlineData(12)]
    public void A_cone_falls_along_its_lines_of_flow_as_made(double grid)
    {
        const double fall = 0.375 / 12;
        var middle = new PlanPoint(30, 30);
        var points = Floors.Grid(grid, 60, 60, 0, 0).Append(middle).Distinct().Read(at => fall * (at - middle).Length, 0);
        var surface = new LevelSurface(points, Outline.Rectangle(60, 60));
        LowSpots.Of(surface, [points.ToList().FindIndex(point => point.At == middle)]).Should().BeEmpty();
        for (var degrees = 0; degrees < 360; degrees += 7)
        {
            var way = new PlanPoint(Math.Cos(degrees * Math.PI / 180), Math.Sin(degrees * Math.PI / 180));
            double Above(double r) => fall * grid * grid / (4 * r);
            var read = (At(surface, middle + (way * (grid + 12))) - At(surface, middle + (way * grid))) / 12;
            ((read - fall) * 12).Should().BeInRange(-Above(grid) - 1e-6, Above(grid + 12) + 1e-6);
        }
    }

    private static double At(LevelSurface surface, PlanPoint place)
    {
        foreach (var triangle in surface.Triangles)
        {
            var (a, b, c) = (surface.Points[triangle.A], surface.Points[triangle.B], surface.Points[triangle.C]);
            var whole = (b.At - a.At).Cross(c.At - a.At);
            var (u, v) = ((place - a.At).Cross(c.At - a.At) / whole, (b.At - a.At).Cross(place - a.At) / whole);
            if (u >= -1e-9 && v >= -1e-9 && u + v <= 1 + 1e-9)
            {
                return a.Height + (u * (b.Height - a.Height)) + (v * (c.Height - a.Height));
            }
        }

        throw new ArgumentException("Outside.", nameof(place));
    }

    private static Func<PlanPoint, double> Hollow(PlanPoint middle) => at =>
        (Slope * at.X) - Math.Max(0, Deep * (1 - (Square(at - middle) / (Across * Across))));

    private static double Square(PlanPoint way) => way.Dot(way);

    /// <summary>Rings in the hollow, of which one meets the pond's middle; corners of the floor and its low side.</summary>
    private static IEnumerable<PlanPoint> Ring(int around, int rings)
    {
        yield return new PlanPoint(24, 12);
        for (var ring = 1; ring <= rings; ring++)
        {
            for (var at = 0; at < around; at++)
            {
                var (sin, cos) = Math.SinCos(at * Math.Tau / around);
                yield return new PlanPoint(24 + (6.0 * ring / rings * cos), 12 + (6.0 * ring / rings * sin));
            }
        }

        foreach (var corner in new PlanPoint[] { new(0, 0), new(48, 0), new(48, 24), new(0, 24), new(0, 12) })
        {
            yield return corner;
        }
    }
}
