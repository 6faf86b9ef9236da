namespace WetCheck.Geometry;

/// <summary>
/// The floor that comes of ribs brought to their marks and filled level between them: triangles between neighbouring ribs, worked out from
/// the marks alone. Where two ribs have marks of one height the straightedge may lie across either way, so both pairs of triangles count.
/// </summary>
/// <param name="closed">The last rib is a neighbour of the first.</param>
internal sealed class ScreedSurface(IReadOnlyList<Rib> ribs, bool closed)
{
    private const double Sliver = 1e-7;

    private readonly IReadOnlyList<(Facet Facet, PlanPoint? Up, int From, bool Other)> _pieces = [.. Pieces(ribs, closed)];

    /// <summary>Cubic inches between the floor and the level of the drain.</summary>
    public double Volume => _pieces.Where(piece => !piece.Other).Sum(piece => piece.Facet.Volume);

    /// <summary>Rise over run.</summary>
    public double Steepest => _pieces.Max(piece => piece.Facet.Slope.Length);

    /// <summary>Of all ways down along a rib.</summary>
    public double Flattest => ribs.Where(rib => rib.Kind != RibKind.Edge).SelectMany(Falls).Min();

    /// <summary>Ribs beside which the floor does not keep to the limits; none: it keeps to them everywhere.</summary>
    public IReadOnlySet<int> Breaks(FallLimits limits)
    {
        var broken = new HashSet<int>();
        foreach (var (facet, up, from, _) in _pieces)
        {
            if (facet.Slope.Length > limits.Most * (1 + 1e-9) || (up is { } way && facet.Slope.Dot(way) < limits.Least * (1 - 1e-9)))
            {
                broken.Add(from);
                broken.Add((from + 1) % ribs.Count);
            }
        }

        broken.UnionWith(Enumerable.Range(0, ribs.Count)
            .Where(at => limits.Measure == FallMeasure.Valley && ribs[at].Kind != RibKind.Edge && Falls(ribs[at])
            .Any(fall => fall < limits.Least * (1 - 1e-9))));
        return broken;
    }

    /// <summary>Whether a mark at the wall that is set so much too high or too low can break a limit; of straight ribs.</summary>
    /// <remarks>The other end of a rib is the drain, which is exact: a mark off by e over a run of l changes the fall
    /// by e over l.</remarks>
    public bool IsTight(FallLimits limits, double off) =>
        _pieces.Any(piece => piece.Up is { } up && piece.Facet.Slope.Dot(up) is var fall
            && off / (piece.Facet.Heights.Max() / fall) is var by
            && (fall + by > limits.Most || fall - by < limits.Least))
        || (limits.Measure == FallMeasure.Valley
            && ribs.Any(rib => rib.Kind == RibKind.Fold && rib.Slope - (off / rib.Length) < limits.Least));

    private static IEnumerable<double> Falls(Rib rib) =>
        rib.Points.Zip(rib.Points.Skip(1), (low, high) => (high.Height - low.Height) / (high.At - low.At).Length);

    private static IEnumerable<(Facet Facet, PlanPoint? Up, int From, bool Other)> Pieces(IReadOnlyList<Rib> ribs, bool closed)
    {
        for (var at = 0; at < (closed ? ribs.Count : ribs.Count - 1); at++)
        {
            foreach (var (facet, other) in Between(ribs[at].Points, ribs[(at + 1) % ribs.Count].Points)
                .Where(one => Math.Abs(one.Facet.Area) > Sliver))
            {
                yield return (facet, ribs[at].Up, at, other);
            }
        }
    }

    /// <summary>Up two ribs at once, always on the one whose next mark is lower.</summary>
    private static IEnumerable<(Facet Facet, bool Other)> Between(IReadOnlyList<(PlanPoint At, double Height)> a,
        IReadOnlyList<(PlanPoint At, double Height)> b)
    {
        var (i, j) = (0, 0);
        while (i < a.Count - 1 || j < b.Count - 1)
        {
            var (nextA, nextB) =
                (i < a.Count - 1 ? a[i + 1].Height : double.PositiveInfinity,
                j < b.Count - 1 ? b[j + 1].Height : double.PositiveInfinity);
            if (Math.Abs(nextA - nextB) < 1e-9)
            {
                yield return (Triangle(a[i], a[i + 1], b[j + 1]), false);
                yield return (Triangle(a[i], b[j + 1], b[j]), false);
                yield return (Triangle(a[i], a[i + 1], b[j]), true);
                yield return (Triangle(a[i + 1], b[j + 1], b[j]), true);
                (i, j) = (i + 1, j + 1);
            }
            else if (nextA < nextB)
            {
                yield return (Triangle(a[i], a[i + 1], b[j]), false);
                i++;
            }
            else
            {
                yield return (Triangle(a[i], b[j + 1], b[j]), false);
                j++;
            }
        }
    }

    private static Facet Triangle((PlanPoint At, double Height) a, (PlanPoint At, double Height) b, (PlanPoint At, double Height) c) =>
        new(null, [a.At, b.At, c.At], [a.Height, b.Height, c.Height]);
}
