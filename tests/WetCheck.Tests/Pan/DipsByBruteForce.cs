using WetCheck.Geometry;

namespace WetCheck.Tests.Pan;

/// <summary>
/// Rim dips of floors drawn at random against all heights of a grid, tried one after the other: a height at each corner
/// and at the foot of the
/// drain on each wall, every plane from its three points. Code of the test alone.
/// </summary>
public sealed class DipsByBruteForce
{
    private const double Step = 0.008;
    private static readonly FallLimits s_limits = new(1 / 48d, 1 / 24d, FallMeasure.Valley);

    [Fact]
    public void No_heights_of_a_grid_dip_less()
    {
        var count = 0;
        for (var seed = 0; count < 40; seed++)
        {
            var (outline, drain) = RandomRooms.Convex(new Random(seed));
            var pan = new Geometry.Pan(outline, drain, Grate.Point);
            if (!pan.IsWithin(s_limits) && RimDip.Of(pan, s_limits) is { Dip: < 0.12 } rim)
            {
                count++;
                var force = ByForce(pan);
                rim.Dip.Should().BeInRange(force - (3 * Step), force + 1e-9, $"floor {seed}");
            }
        }
    }

    /// <summary>The narrowest band of heights in which a rim can be closed.</summary>
    private static double ByForce(Geometry.Pan pan)
    {
        var bands = Enumerable.Range(0, 30).Select(steps => steps * Step);
        var highest = pan.Folds.Max() * s_limits.Least;
        return bands.First(band => Enumerable.Range(-1, 25).Any(up => Closes(pan, highest + (up * Step) - band, highest + (up * Step))));
    }

    /// <summary>From each height of the first corner round the walls and back to it.</summary>
    private static bool Closes(Geometry.Pan pan, double low, double high)
    {
        double[] heights = [.. Enumerable.Range(0, (int)Math.Floor(((high - low) / Step) + 1e-9) + 1).Select(at => low + (at * Step))];
        var walls = pan.Outline.Walls.Select((wall, at) => Table(pan, wall, at, heights)).ToList();
        return Enumerable.Range(0, heights.Length).Any(first =>
        {
            var reached = Enumerable.Range(0, heights.Length).Select(height => height == first).ToArray();
            foreach (var wall in walls)
            {
                reached = [.. Enumerable.Range(0, heights.Length)
                    .Select(to => Enumerable.Range(0, heights.Length).Any(from => reached[from] && wall[from, to]))];
            }

            return reached[first];
        });
    }

    /// <summary>Which heights of a wall's two ends go together with some height at its foot.</summary>
    private static bool[,] Table(Geometry.Pan pan, Wall wall, int at, double[] heights)
    {
        var next = (at + 1) % pan.Outline.Corners.Count;
        var foot = wall.From + ((wall.To - wall.From) * (wall.Foot(pan.Drain) / wall.Length));
        var table = new bool[heights.Length, heights.Length];
        for (var (from, to) = (0, 0); from < heights.Length; (from, to) = to + 1 < heights.Length ? (from, to + 1) : (from + 1, 0))
        {
            table[from, to] =
                heights[from] >= (s_limits.Least * pan.Folds[at]) - 1e-9
                && heights[to] >= (s_limits.Least * pan.Folds[next]) - 1e-9
                && heights.Any(middle => middle >= (s_limits.Least * pan.Runs[at]) - 1e-9
                    && Slope(wall.From, heights[from], foot, middle, pan.Drain) <= s_limits.Most + 1e-9
                        && Slope(foot, middle, wall.To, heights[to], pan.Drain) <= s_limits.Most + 1e-9);
        }

        return table;
    }

    private static double Slope(PlanPoint a, double heightA, PlanPoint b, double heightB, PlanPoint drain)
    {
        var (u, v) = (a - drain, b - drain);
        var twice = u.Cross(v);
        return Math.Sqrt(Math.Pow(((heightA * v.Y) - (heightB * u.Y)) / twice, 2)
            + Math.Pow(((heightB * u.X) - (heightA * v.X)) / twice, 2));
    }
}
