namespace WetCheck.Geometry;

/// <summary>One plane of a floor as its level readings tell it.</summary>
/// <param name="Wall">It falls from it.</param>
/// <param name="Points">Readings on it, by their index among all.</param>
/// <param name="Fit">Null: too few points, or all in one line.</param>
/// <param name="Slopes">Empty: it is not flat within the readings.</param>
public sealed record FacetLevels(int Wall, IReadOnlyList<int> Points, LeastSquares? Fit, GradientPolygon Slopes)
{
    public static FacetLevels Of(int wall, IReadOnlyList<LevelPoint> all, IReadOnlyList<int> on)
    {
        LevelPoint[] points = [.. on.Select(at => all[at])];
        return new FacetLevels(wall, on, LeastSquares.Of(points), GradientPolygon.Of(points));
    }

    /// <summary>Null where no plane fits.</summary>
    /// <param name="uphill">Of length 1.</param>
    public FallBounds? Along(PlanPoint uphill) => Slopes.IsEmpty ? null
        : Slopes.Along(uphill) is var (least, most) ? new FallBounds(Fit?.Slope.Dot(uphill), least, most) : null;

    public FallBounds? Uphill =>
        Slopes.IsEmpty ? null : Slopes.Uphill is var (least, most) ? new FallBounds(Fit?.Slope.Length, least, most)
        : null;

    /// <summary>
    /// Readings that stand alone against the others: without any one of them a plane fits. Only a point that made a cut
    /// can be one.
    /// </summary>
    public IReadOnlyList<int> Alone(IReadOnlyList<LevelPoint> all) => !Slopes.IsEmpty ? []
        : [.. Slopes.Binding.Where(odd =>
            !GradientPolygon.Of([.. Points.Where((_, at) => at != odd).Select(at => all[at])]).IsEmpty)
            .Select(odd => Points[odd])];

    /// <summary>By how much, at the least, some point lies off any plane, beyond its half mark. Zero where one fits.</summary>
    public double Unevenness(IReadOnlyList<LevelPoint> all)
    {
        if (Slopes.IsEmpty)
        {
            LevelPoint[] points = [.. Points.Select(at => all[at])];
            var (uneven, even) = (0.0, points.Max(point => point.Height) - points.Min(point => point.Height));
            for (var step = 0; step < 40; step++)
            {
                var half = (uneven + even) / 2;
                (uneven, even) = GradientPolygon.Of(points, half).IsEmpty ? (half, even) : (uneven, half);
            }

            return uneven;
        }

        return 0;
    }
}
