using WetCheck.Geometry;
using static WetCheck.Tests.Pan.FloorOfAJob;

namespace WetCheck.Tests.Heights;

/// <summary>Where water leaves first, against a flood of the same floor cut into cells: code of the test alone.</summary>
public sealed class LowestWayOut
{
    private const double Cell = 0.5;

    [Fact]
    public void It_is_that_of_a_flood_over_cells_on_floors_with_hollows_and_humps()
    {
        var floors = Depth.Of(daily: 60, deep: 200, night: 2000);
        var behind = 0;
        for (var seed = 0; seed < floors; seed++)
        {
            var random = new Random(seed);
            var floor = Floor(random);
            var corners = floor.Where(facet => facet.Corners.Count == 3).Select(facet => facet.Corners[0]).Take(8).ToList();
            List<(PlanPoint At, double Height)> exits =
                [.. Enumerable.Range(0, 4).Select(_ => Between(corners, random))
                .Select(at => (at, random.NextDouble() * 1.5))];
            var exact = LowestWay.Of(floor, exits);
            var cells = Flood(floor, exits);
            var near = Cell * floor.Max(facet => facet.Slope.Length) * 1.5;
            foreach (var (exit, level) in exact)
            {
                level.Should().BeApproximately(cells[exit], near, $"floor {seed}, exit {exit}");
                behind += level > exits[exit].Height + near ? 1 : 0;
            }
        }

        behind.Should().BeGreaterThan(floors / 4, "else nothing was asked of the way to an exit");
    }

    /// <summary>Worked out by hand: a hump of 1 in across the way to the only low exit.</summary>
    [Fact]
    public void An_exit_behind_a_hump_lets_nothing_out_before_the_hump_is_passed()
    {
        Facet[] floor =
        [
            new(null, [new(0, 0), new(10, 0), new(10, 10), new(0, 10)], [0, 1, 1, 0]),
            new(null, [new(10, 0), new(20, 0), new(20, 10), new(10, 10)], [1, 0.25, 0.25, 1]),
        ];
        LowestWay.Of(floor, [(new(20, 5), 0.3), (new(0, 5), 1.25)]).Should().Equal((0, 1), (1, 1.25));
    }

    [Fact]
    public void An_exit_off_the_floor_is_refused() => FluentActions
        .Invoking(() => LowestWay.Of([new(null, [new(0, 0), new(10, 0), new(10, 10)], [0, 1, 1])], [(new(-5, 5), 1)]))
            .Should().Throw<ArgumentException>();

    /// <summary>Worked out by hand: the edge is lowest at the entry; a hump of 1/2 in before it holds the water back so high.</summary>
    [Theory]
    [InlineData("", 0.25)]
    [InlineData("  20,10 1/2", 0.5)]
    public void A_floor_as_it_was_read_lets_water_out_past_its_humps(string hump, double level)
    {
        var levels = Told(Inches + Rectangle(40, 40) + "drain: { form: point }\n" + "readings by: MR, tape, 2026-11-25\n")
            .Json["levels"]!["first_out"];
        levels.Should().BeNull("nothing was read");
        var job = Inches.Replace("floor: {",
            $"floor: {{ levels: \"0,0 3/4  20,0 1/4  40,0 3/4  0,20 3/4  20,20 0  40,20 3/4  0,40 3/4  20,40 3/4  "
            + $"40,40 3/4{hump}\",", StringComparison.Ordinal);
        var told = Told(job + Rectangle(40, 40) + "drain: { form: point }\n").Json["levels"]!;
        Number(told["first_out"]).Should().Be(level);
        (Number(told["first_out_at"]![0]), Number(told["first_out_at"]![1])).Should().Be((20, 0));
    }

    /// <summary>
    /// Round a drain at (30, 30): eight corners, eight places half way, all of heights of their own. Outer triangles
    /// first.
    /// </summary>
    private static List<Facet> Floor(Random random)
    {
        var drain = new PlanPoint(30, 30);
        var outer = Ring(1);
        var inner = Ring(0.5);
        var (outside, inside) =
            (outer.ConvertAll(_ => 0.2 + random.NextDouble()),
            inner.ConvertAll(_ => 0.05 + (random.NextDouble() * 1.4)));
        var facets = new List<Facet>();
        for (var at = 0; at < 8; at++)
        {
            var next = (at + 1) % 8;
            facets.Add(new(null, [outer[at], outer[next], inner[at]], [outside[at], outside[next], inside[at]]));
        }

        for (var at = 0; at < 8; at++)
        {
            var next = (at + 1) % 8;
            facets.Add(new(null, [outer[next], inner[next], inner[at]], [outside[next], inside[next], inside[at]]));
            facets.Add(new(null, [inner[at], inner[next], drain], [inside[at], inside[next], 0]));
        }

        return facets;

        List<PlanPoint> Ring(double share) =>
            [.. Enumerable.Range(0, 8)
            .Select(at => drain
            + (new PlanPoint(Math.Cos(at * Math.PI / 4), Math.Sin(at * Math.PI / 4)) * (30 * share)))];
    }

    private static PlanPoint Between(List<PlanPoint> ring, Random random)
    {
        var at = random.Next(ring.Count);
        return ring[at] + ((ring[(at + 1) % ring.Count] - ring[at]) * random.NextDouble());
    }

    private static double[] Flood(List<Facet> floor, IReadOnlyList<(PlanPoint At, double Height)> exits)
    {
        const int Count = (int)(60 / Cell);
        var heights = new double[Count, Count];
        var levels = new double[Count, Count];
        for (var (x, y) = (0, 0); y < Count; (x, y) = x + 1 < Count ? (x + 1, y) : (0, y + 1))
        {
            (heights[x, y], levels[x, y]) = (At(floor, Middle(x, y)), double.PositiveInfinity);
        }

        var wave = new PriorityQueue<(int X, int Y), double>();
        wave.Enqueue((Count / 2, Count / 2), heights[Count / 2, Count / 2]);
        while (wave.TryDequeue(out var cell, out var level))
        {
            if (level < levels[cell.X, cell.Y])
            {
                levels[cell.X, cell.Y] = level;
                foreach (var (x, y) in Around(cell, Count).Where(next => !double.IsNaN(heights[next.X, next.Y])))
                {
                    wave.Enqueue((x, y), Math.Max(level, heights[x, y]));
                }
            }
        }

        return [.. exits.Select(exit => Math.Max(exit.Height, levels[Nearest(exit.At).X, Nearest(exit.At).Y]))];

        (int X, int Y) Nearest(PlanPoint at) => Enumerable.Range(0, Count * Count).Select(index => (X: index % Count, Y: index / Count))
            .Where(cell => !double.IsNaN(heights[cell.X, cell.Y])).MinBy(cell => (Middle(cell.X, cell.Y) - at).Length);
    }

    private static PlanPoint Middle(int x, int y) => new((x + 0.5) * Cell, (y + 0.5) * Cell);

    private static IEnumerable<(int X, int Y)> Around((int X, int Y) cell, int count) =>
        from dx in Enumerable.Range(-1, 3)
        from dy in Enumerable.Range(-1, 3)
        let next = (X: cell.X + dx, Y: cell.Y + dy)
        where next.X >= 0 && next.Y >= 0 && next.X < count && next.Y < count
        select next;

    /// <summary>By the three areas of the triangle that holds the place; NaN off the floor.</summary>
    private static double At(List<Facet> floor, PlanPoint place)
    {
        foreach (var facet in floor)
        {
            var (a, b, c) = (facet.Corners[0], facet.Corners[1], facet.Corners[2]);
            var whole = (b - a).Cross(c - a);
            var (u, v, w) =
                ((b - place).Cross(c - place) / whole, (c - place).Cross(a - place) / whole,
                (a - place).Cross(b - place) / whole);
            if (u >= 0 && v >= 0 && w >= 0)
            {
                return (u * facet.Heights[0]) + (v * facet.Heights[1]) + (w * facet.Heights[2]);
            }
        }

        return double.NaN;
    }
}
