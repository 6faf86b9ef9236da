using NetTopologySuite.Geometries;
using NetTopologySuite.Triangulate.Polygon;
using WetCheck.Geometry;
using WetCheck.Model;

namespace WetCheck.Tests.Marks;

/// <summary>
/// A floor made from printed figures alone: where each rib starts and ends, and its marks. Ribs in the order of their
/// bearing from the drain;
/// between two of them a constrained Delaunay triangulation of a general geometry library.
/// </summary>
internal sealed class Rebuilt
{
    private const double Sliver = 1e-4;

    public Rebuilt(IReadOnlyList<MarkRib> ribs, Outline outline, PlanPoint drain)
    {
        var inOrder = ribs.OrderBy(rib => Math.Atan2(rib.From.Y - drain.Y, rib.From.X - drain.X)).ThenBy(rib => Turn(rib, drain)).ToList();
        Falls = [.. inOrder.Where(rib => rib.Kind != "plane").SelectMany(Along)];
        Triangles = [.. inOrder.SelectMany((rib, at) => Between(rib, inOrder[(at + 1) % inOrder.Count], outline))];
    }

    /// <summary>Rise over run between neighbouring marks of a rib.</summary>
    public IReadOnlyList<double> Falls { get; }

    /// <summary>Slope, its part square to the wall between the two ribs, area, and mean height.</summary>
    public IReadOnlyList<(double Slope, double? Square, double Area, double Mean)> Triangles { get; }

    public double Area => Triangles.Sum(one => one.Area);

    public double Volume => Triangles.Sum(one => one.Area * one.Mean);

    /// <summary>From the bearing of a rib's start to that of its end, against the clock.</summary>
    private static double Turn(MarkRib rib, PlanPoint drain) => Math.IEEERemainder(
        Math.Atan2(rib.To.Y - drain.Y, rib.To.X - drain.X) - Math.Atan2(rib.From.Y - drain.Y, rib.From.X - drain.X), Math.Tau);

    public static IReadOnlyList<CoordinateZ> Points(MarkRib rib)
    {
        var length = Math.Sqrt(Math.Pow(rib.From.X - rib.To.X, 2) + Math.Pow(rib.From.Y - rib.To.Y, 2));
        return [At(0, 0), .. rib.Marks.Select(mark => At(mark.Far, mark.Height)), At(length, rib.Height)];

        CoordinateZ At(double far, double height) =>
            new(rib.To.X + ((rib.From.X - rib.To.X) * far / length),
            rib.To.Y + ((rib.From.Y - rib.To.Y) * far / length), height);
    }

    private static IEnumerable<double> Along(MarkRib rib) =>
        Points(rib) is var points ? points.Zip(points.Skip(1), (low, high) => (high.Z - low.Z) / low.Distance(high))
        : [];

    private static IEnumerable<(double, double?, double, double)> Between(MarkRib a, MarkRib b, Outline outline)
    {
        var points = Points(a).Concat(Points(b).Reverse()).DistinctBy(point => (Math.Round(point.X, 6), Math.Round(point.Y, 6))).ToList();
        var wall = a.From == b.From ? null
            : outline.Walls.FirstOrDefault(one => new[] { a.From, b.From }
            .All(at => Math.Abs(one.Distance(new(at.X, at.Y))) < 0.05 && one.Foot(new(at.X, at.Y)) is var foot
            && foot > -0.05 && foot < one.Length + 0.05));
        if (points.Count < 3)
        {
            yield break;
        }

        var ring = new Polygon(new LinearRing([.. points, points[0]]));
        foreach (var triangle in ((GeometryCollection)ConstrainedDelaunayTriangulator.Triangulate(ring))
            .Geometries.Where(one => one.Area > Sliver))
        {
            var corner = triangle.Coordinates.Take(3).Select(at => points.MinBy(point => point.Distance(at))!).ToArray();
            var (ux, uy, uz) = (corner[1].X - corner[0].X, corner[1].Y - corner[0].Y, corner[1].Z - corner[0].Z);
            var (vx, vy, vz) = (corner[2].X - corner[0].X, corner[2].Y - corner[0].Y, corner[2].Z - corner[0].Z);
            var det = (ux * vy) - (uy * vx);
            var (gx, gy) = (((uz * vy) - (vz * uy)) / det, ((vz * ux) - (uz * vx)) / det);
            yield return (Math.Sqrt((gx * gx) + (gy * gy)),
                wall is null ? null
                : -((gx * wall.Inward.X) + (gy * wall.Inward.Y)), triangle.Area, corner.Average(point => point.Z));
        }
    }
}
