namespace WetCheck.Geometry;

/// <summary>A rigid tile on its bed: the plane nearest to the bed under it, by least squares over its area. Inches.</summary>
/// <param name="Along">Which of its course, and <paramref name="Across"/> which course.</param>
/// <param name="Middle">Of what the walls and the grate leave of it.</param>
/// <param name="Height">Of its plane there.</param>
/// <param name="Slope">Of its plane, rise over run.</param>
/// <param name="Planes">Of the bed, that it lies on; more than one where a fold runs under it.</param>
/// <param name="Gap">Between tile and bed where it rests on the highest of it.</param>
public sealed record LaidTile(int Along, int Across, PlanPoint Middle, double Height, PlanPoint Slope, int Planes, double Gap)
{
    private const double Sliver = 1e-9;

    public double HeightAt(PlanPoint point) => Height + Slope.Dot(point - Middle);

    /// <returns>Null where nothing of it lies on the floor.</returns>
    public static LaidTile? On(IReadOnlyList<Facet> floor, TileGrid grid, int along, int across)
    {
        var corners = grid.Corners(along, across);
        var parts = floor.Select(facet => (Facet: facet, Piece: FacetClip.Keep(corners, facet)))
            .Where(part => part.Piece.Count > 2 && Outline.AreaOf(part.Piece) > Sliver).ToList();
        return parts.Count == 0 ? null : Fit(parts, along, across);
    }

    private static LaidTile Fit(List<(Facet Facet, List<PlanPoint> Piece)> parts, int along, int across)
    {
        // The mean over the middles of a triangle's sides is exact for second order, so few points stand for the whole area.
        var points =
            parts.SelectMany(part => Middles(part.Piece)
            .Select(at => (at.Place, at.Weight, Bed: FacetClip.HeightAt(part.Facet, at.Place)))).ToList();
        var area = points.Sum(at => at.Weight);
        var middle = points.Aggregate(default(PlanPoint), (sum, at) => sum + (at.Place * at.Weight)) * (1 / area);
        var height = points.Sum(at => at.Bed * at.Weight) / area;
        var (xx, xy, yy, xz, yz) = (0.0, 0.0, 0.0, 0.0, 0.0);
        foreach (var (place, weight, bed) in points)
        {
            var (off, rise) = (place - middle, bed - height);
            (xx, xy, yy) = (xx + (weight * off.X * off.X), xy + (weight * off.X * off.Y), yy + (weight * off.Y * off.Y));
            (xz, yz) = (xz + (weight * off.X * rise), yz + (weight * off.Y * rise));
        }

        var whole = (xx * yy) - (xy * xy);
        var slope = new PlanPoint((xz * yy) - (yz * xy), (yz * xx) - (xz * xy)) * (1 / whole);
        var over = parts.SelectMany(part =>
            part.Piece.Select(at => FacetClip.HeightAt(part.Facet, at) - height - slope.Dot(at - middle))).ToList();
        return new LaidTile(along, across, middle, height, slope, parts.Count, over.Max() - over.Min());
    }

    private static IEnumerable<(PlanPoint Place, double Weight)> Middles(List<PlanPoint> piece)
    {
        for (var at = 1; at + 1 < piece.Count; at++)
        {
            var (a, b, c) = (piece[0], piece[at], piece[at + 1]);
            var third = (b - a).Cross(c - a) / 6;
            yield return ((a + b) * 0.5, third);
            yield return ((b + c) * 0.5, third);
            yield return ((c + a) * 0.5, third);
        }
    }
}
