namespace WetCheck.Geometry;

/// <summary>
/// All slopes that a plane through the points may have, each point's height being free within half a mark: a convex polygon in the plane of
/// slopes. The level that heights are taken from cancels, since only differences of two points count.
/// </summary>
/// <remarks>
/// Cutting planes: at a corner of what is left, the two points that it fails most are found, and their half-plane is
/// cut off, until no corner
/// fails. So of all pairs only those that bind are ever looked at, long ones first.
/// </remarks>
public sealed class GradientPolygon
{
    /// <summary>A fall steeper than this, rise over run, is taken as not bounded.</summary>
    public const double Steepest = 1;

    private const double Far = 10;
    private const double Hair = 1e-11;

    private GradientPolygon(IReadOnlyList<PlanPoint> corners, IReadOnlyList<int> binding) => (Corners, Binding) = (corners, binding);

    /// <summary>Slopes uphill, rise over run, against the clock. Empty: no plane fits.</summary>
    public IReadOnlyList<PlanPoint> Corners { get; }

    /// <summary>Points that made a cut, by their index. Where no plane fits, these alone fit none.</summary>
    public IReadOnlyList<int> Binding { get; }

    public bool IsEmpty => Corners.Count == 0;

    /// <param name="wider">Added to each half mark, inches.</param>
    public static GradientPolygon Of(IReadOnlyList<LevelPoint> points, double wider = 0)
    {
        List<PlanPoint> left = [new(-Far, -Far), new(Far, -Far), new(Far, Far), new(-Far, Far)];
        var binding = new SortedSet<int>();
        var held = new HashSet<PlanPoint>();
        while (points.Count > 0 && left.FindIndex(corner => !held.Contains(corner)) is >= 0 and var next)
        {
            var (low, high, over) = Worst(points, left[next], wider);
            var way = points[low].At - points[high].At;
            if (over <= Hair * Math.Max(1, way.Length))
            {
                held.Add(left[next]);
                continue;
            }

            // From the one to the other a plane rises by at most what their half marks leave.
            var most = points[low].Height + points[low].Half - points[high].Height + points[high].Half + (2 * wider);
            binding.Add(low);
            binding.Add(high);
            left = way.Length < 1e-12 ? [] : Clip.Keep(left, slope => (most - slope.Dot(way)) / way.Length);
        }

        return new GradientPolygon(left, [.. binding]);
    }

    /// <summary>Least and most rise over run this way; infinite where the points do not tell.</summary>
    /// <param name="way">Of length 1.</param>
    public (double Least, double Most) Along(PlanPoint way)
    {
        var (least, most) = (Corners.Min(slope => slope.Dot(way)), Corners.Max(slope => slope.Dot(way)));
        return (least < -Steepest ? double.NegativeInfinity : least, most > Steepest ? double.PositiveInfinity : most);
    }

    /// <summary>Least and most rise over run straight uphill.</summary>
    public (double Least, double Most) Uphill
    {
        get
        {
            var most = Corners.Max(slope => slope.Length);
            return (Nearest(), most > Steepest ? double.PositiveInfinity : most);
        }
    }

    /// <summary>The point that fits a slope least from below and from above, and by how much the two fail together.</summary>
    private static (int Low, int High, double Over) Worst(IReadOnlyList<LevelPoint> points, PlanPoint slope, double wider)
    {
        var (low, high, least, most) = (0, 0, double.PositiveInfinity, double.NegativeInfinity);
        for (var at = 0; at < points.Count; at++)
        {
            var (level, half) = (points[at].Height - slope.Dot(points[at].At), points[at].Half + wider);
            (low, least) = level + half < least ? (at, level + half) : (low, least);
            (high, most) = level - half > most ? (at, level - half) : (high, most);
        }

        return (low, high, most - least);
    }

    private double Nearest()
    {
        var inside = Corners.Count > 2;
        var nearest = double.PositiveInfinity;
        for (var at = 0; at < Corners.Count; at++)
        {
            var (from, to) = (Corners[at], Corners[(at + 1) % Corners.Count]);
            var way = to - from;
            var part = way.Length < 1e-15 ? 0 : Math.Clamp(-from.Dot(way) / way.Dot(way), 0, 1);
            nearest = Math.Min(nearest, (from + (way * part)).Length);
            inside &= way.Cross(from * -1) >= 0;
        }

        return inside ? 0 : nearest;
    }
}
