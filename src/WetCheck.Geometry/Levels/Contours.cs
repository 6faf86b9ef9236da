using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>A line of one height.</summary>
/// <param name="Line">From end to end; closed where the first is also the last.</param>
public sealed record Contour(double Height, IReadOnlyList<PlanPoint> Line);

/// <summary>Lines of equal height between level readings.</summary>
public static class Contours
{
    /// <param name="zero">A height that has a line.</param>
    /// <param name="step">From one line to the next, over zero; doubled until there are no more than
    /// <see cref="Limits.Contours"/> of them.</param>
    public static IReadOnlyList<Contour> Of(LevelSurface surface, double zero, double step)
    {
        if (surface.Triangles.Count == 0)
        {
            return [];
        }

        var (least, most) = (surface.Points.Min(point => point.Height), surface.Points.Max(point => point.Height));
        while (most - least > Limits.Contours * step)
        {
            step *= 2;
        }

        var lines = new List<Contour>();
        for (var at = (int)Math.Ceiling((least - zero) / step); zero + (at * step) <= most; at++)
        {
            var height = zero + (at * step);
            lines.AddRange(Lines(surface, height).Select(line => new Contour(height, line)));
        }

        return lines;
    }

    private static IEnumerable<IReadOnlyList<PlanPoint>> Lines(LevelSurface surface, double height)
    {
        // A reading on the line counts as over it, so that each triangle is crossed twice or not at all.
        var ends = new Dictionary<(int, int), List<(int, int)>>();
        foreach (var (a, b, c) in surface.Triangles)
        {
            (int, int)[] cut =
                [.. new[] { (a, b), (b, c), (c, a) }.Where(edge => IsOver(edge.Item1) != IsOver(edge.Item2))
                .Select(edge => edge.Item1 < edge.Item2 ? edge : (edge.Item2, edge.Item1))];
            if (cut.Length == 2)
            {
                Join(cut[0], cut[1]);
                Join(cut[1], cut[0]);
            }
        }

        // From open ends first; what is left is closed.
        foreach (var start in ends.Keys.OrderBy(edge => ends[edge].Count).ThenBy(edge => edge).ToList())
        {
            var line = new List<PlanPoint>();
            for ((int, int)? at = start; at is { } edge && ends.ContainsKey(edge);)
            {
                line.Add(Crossing(edge));
                at = ends[edge].Count > 0 ? ends[edge][0] : null;
                if (at is { } next)
                {
                    ends[edge].Remove(next);
                    ends[next].Remove(edge);
                }
            }

            if (line.Count > 1)
            {
                yield return line;
            }
        }

        bool IsOver(int at) => surface.Points[at].Height >= height;

        void Join((int, int) from, (int, int) to) => (ends.TryGetValue(from, out var list) ? list : ends[from] = []).Add(to);

        PlanPoint Crossing((int One, int Other) edge)
        {
            var (one, other) = (surface.Points[edge.One], surface.Points[edge.Other]);
            return one.At + ((other.At - one.At) * ((height - one.Height) / (other.Height - one.Height)));
        }
    }
}
