namespace WetCheck.Geometry;

/// <summary>A stretch of a plane that is proven flatter than it should be.</summary>
/// <param name="Most">Its fall can't be more, rise over run.</param>
public sealed record Flat(int Wall, PlanPoint At, double Most);

/// <summary>
/// Looks at a plane foot by foot: where the readings of one square allow no fall as great as the least, it is flat
/// there.
/// </summary>
public static class Flats
{
    private const double Foot = 12;

    /// <param name="least">Rise over run.</param>
    public static IEnumerable<Flat> Of(FacetLevels facet, IReadOnlyList<LevelPoint> all, double least)
    {
        foreach (var square in facet.Points.Select(at => all[at])
            .GroupBy(point => (Math.Floor(point.At.X / Foot), Math.Floor(point.At.Y / Foot))))
        {
            LevelPoint[] points = [.. square];
            var slopes = GradientPolygon.Of(points);
            if (!slopes.IsEmpty && slopes.Uphill.Most < least - 1e-9)
            {
                var middle = points.Aggregate(default(PlanPoint), (sum, point) => sum + point.At) * (1d / points.Length);
                yield return new Flat(facet.Wall, middle, slopes.Uphill.Most);
            }
        }
    }
}
