using BenchmarkDotNet.Attributes;
using NetTopologySuite.Geometries;
using NetTopologySuite.Triangulate;
using WetCheck.Geometry;

namespace WetCheck.Benchmarks;

/// <summary>
/// 12 corners and 5,000 level points: facets, bounds, triangles and low spots, against a plain triangulation of the
/// same points by NetTopologySuite.
/// </summary>
public class ManyLevels
{
    private const int Points = 5000;

    private Outline _outline = null!;
    private PlanPoint _drain;
    private LevelPoint[] _points = [];
    private Coordinate[] _sites = [];

    /// <summary>Twelve corners round a drain, each wall in its sight; points anywhere, read to a sixteenth.</summary>
    [GlobalSetup]
    public void Open()
    {
        var random = new Random(5000);
        _drain = new PlanPoint(60, 60);
        _outline = new Outline(Enumerable.Range(0, 12)
            .Select(at => _drain
            + (new PlanPoint(Math.Cos(at * Math.Tau / 12), Math.Sin(at * Math.Tau / 12)) * (at % 2 == 0 ? 60 : 50))));
        var places = new HashSet<PlanPoint> { _drain };
        while (places.Count < Points)
        {
            var at = new PlanPoint(Math.Round(120 * random.NextDouble() * 16) / 16, Math.Round(120 * random.NextDouble() * 16) / 16);
            if (_outline.Contains(at))
            {
                places.Add(at);
            }
        }

        _points = [.. places.Select(at => new LevelPoint(at, Math.Round((at - _drain).Length / 48 * 16) / 16, 1 / 32d))];
        _sites = [.. places.Select(at => new Coordinate(at.X, at.Y))];
    }

    [Benchmark(Baseline = true)]
    public int Triangulated()
    {
        var builder = new DelaunayTriangulationBuilder();
        builder.SetSites(_sites);
        return builder.GetTriangles(GeometryFactory.Default).NumGeometries;
    }

    [Benchmark]
    public int Levels()
    {
        var (points, _) = LevelDoubts.Of(_points, _outline);
        var facets = new FloorFacets(_outline, _drain, [Grate.Point]).Of(points);
        var surface = new LevelSurface(points, _outline);
        return LowSpots.Of(surface, [0]).Count + facets.Sum(facet => facet.Alone(points).Count + Bumps.Of(facet, surface).Count);
    }
}
