namespace WetCheck.Geometry;

/// <summary>
/// Where water that rises over a drain leaves a floor: at each exit, as soon as it stands as high as the exit and as the lowest way to it.
/// On planes the lowest way between two places keeps to their corners, so a search over corners is exact. Source: flooding by
/// priority, any text on terrain.
/// </summary>
public static class LowestWay
{
    private const double Same = 1e-6;

    /// <param name="floor">Convex planes that meet corner to corner.</param>
    /// <param name="exits">Places on the floor and heights of the exits, as the floor's.</param>
    /// <param name="drain">Water rises over the corner nearest to it; null: over the lowest.</param>
    /// <returns>The level at which water leaves by each exit, the lowest first.</returns>
    /// <exception cref="ArgumentException">An exit is not on the floor.</exception>
    public static IReadOnlyList<(int Exit, double Level)> Of(IReadOnlyList<Facet> floor,
        IReadOnlyList<(PlanPoint At, double Height)> exits, PlanPoint? drain = null)
    {
        var at = new List<(PlanPoint Place, double Height)>();
        var numbers = new Dictionary<(long, long, long), int>();
        var planes =
            floor.Select(facet =>
            facet.Corners.Select((corner, index) => Number(at, numbers, corner, facet.Heights[index])).ToList())
            .ToList();
        var lowest = at.Min(one => one.Height);
        var starts = Enumerable.Range(0, at.Count).Where(corner => drain is null && at[corner].Height <= lowest + Same).ToList();
        if (drain is { } from)
        {
            starts.Add(Enumerable.Range(0, at.Count).MinBy(corner => (at[corner].Place - from).Length));
        }

        var levels = Flood(at.ConvertAll(one => one.Height), planes, starts);
        return [.. exits.Select((exit, index) => (index, Math.Max(exit.Height, PassTo(exit.At)))).OrderBy(one => one.Item2)];

        double PassTo(PlanPoint place) =>
            planes.Select((corners, index) => (corners, Facet: floor[index])).Where(one => Holds(one.Facet, place))
            .Select(one => Math.Max(HeightAt(one.Facet, place), one.corners.Min(corner => levels[corner])))
            .DefaultIfEmpty(double.NaN).Min() is var pass && !double.IsNaN(pass) ? pass
                : throw new ArgumentException("An exit is not on the floor.", nameof(exits));
    }

    /// <summary>Corners that differ by less than a millionth of an inch are one.</summary>
    private static int Number(List<(PlanPoint Place, double Height)> known, Dictionary<(long, long, long),
        int> numbers, PlanPoint place, double height)
    {
        var key = ((long)Math.Round(place.X / Same), (long)Math.Round(place.Y / Same), (long)Math.Round(height / Same));
        if (!numbers.TryGetValue(key, out var number))
        {
            numbers[key] = number = known.Count;
            known.Add((place, height));
        }

        return number;
    }

    /// <summary>The level at which water reaches each corner.</summary>
    private static double[] Flood(List<double> heights, List<List<int>> planes, List<int> starts)
    {
        var levels = Enumerable.Repeat(double.PositiveInfinity, heights.Count).ToArray();
        var around = planes.SelectMany(plane => plane.Select(corner => (corner, plane))).ToLookup(one => one.corner, one => one.plane);
        var wave = new PriorityQueue<int, double>();
        foreach (var start in starts)
        {
            wave.Enqueue(start, heights[start]);
        }

        while (wave.TryDequeue(out var corner, out var level))
        {
            if (level < levels[corner])
            {
                levels[corner] = level;
                foreach (var next in around[corner].SelectMany(plane => plane).Where(next => double.IsPositiveInfinity(levels[next])))
                {
                    wave.Enqueue(next, Math.Max(level, heights[next]));
                }
            }
        }

        return levels;
    }

    private static bool Holds(Facet facet, PlanPoint place) => Enumerable.Range(0, facet.Corners.Count).All(at =>
        facet.Corners[(at + 1) % facet.Corners.Count] - facet.Corners[at] is var side
            && side.Cross(place - facet.Corners[at]) >= -Same * Math.Max(1, side.Length));

    private static double HeightAt(Facet facet, PlanPoint place) => facet.Heights[0] + facet.Slope.Dot(place - facet.Corners[0]);
}
