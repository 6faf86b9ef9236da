namespace WetCheck.Geometry;

/// <summary>A place that lies off the plane of its facet by more than half marks explain.</summary>
/// <param name="At">Where it lies farthest off.</param>
/// <param name="Off">Over zero: to shave. Under zero: to add. Inches.</param>
/// <param name="Readings">So many neighbours lie off it the same way.</param>
public sealed record Bump(int Wall, PlanPoint At, double Off, int Readings);

/// <summary>Humps and hollows of a facet that is proven uneven; of one that a plane fits none is told.</summary>
public static class Bumps
{
    private const int Rounds = 30;

    /// <returns>The farthest off first.</returns>
    public static IReadOnlyList<Bump> Of(FacetLevels facet, LevelSurface surface)
    {
        if (!facet.Slopes.IsEmpty || Plane([.. facet.Points.Select(at => surface.Points[at])]) is not { } plane)
        {
            return [];
        }

        double Off(int at) => surface.Points[at].Height - plane.At(surface.Points[at].At);
        var off = facet.Points.Where(at => Math.Abs(Off(at)) > 2 * surface.Points[at].Half);
        return [.. surface.Groups(off, (one, other) => Off(one) > 0 == Off(other) > 0)
            .Select(group => (Worst: group.MaxBy(at => Math.Abs(Off(at))), group.Count))
            .Select(group => new Bump(facet.Wall, surface.Points[group.Worst].At, Off(group.Worst), group.Count))
            .OrderByDescending(bump => Math.Abs(bump.Off))];
    }

    /// <summary>The plane most points lie on, so that a hump does not lift it: points count the less, the farther they
    /// lie off (least absolute
    /// misfits by repeated weights; any text on statistics).</summary>
    private static LeastSquares? Plane(IReadOnlyList<LevelPoint> points)
    {
        var plane = LeastSquares.Of(points);
        for (var round = 0; round < Rounds && plane is not null; round++)
        {
            var before = plane;
            plane = LeastSquares.Of(points,
                at => 1 / Math.Max(points[at].Half / 4, Math.Abs(points[at].Height - before.At(points[at].At))))
                ?? before;
        }

        return plane;
    }
}
