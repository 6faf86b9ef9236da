using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The tile of a job's floor on its folds.</summary>
public static class FloorTiles
{
    /// <summary>As many tiles as moving their grid is searched for: more are small, and moving gains them next to nothing.</summary>
    private const int SearchedAtMost = 260;

    private static readonly double[] s_inches = [1, 2, 3, 4, 6, 8, 12];
    private static readonly double[] s_metric = [25, 50, 75, 100, 150, 200, 300];

    /// <param name="known">All parts of the job, as <see cref="Derive.From"/> gives them. Plans count.</param>
    /// <param name="falls">Of the same job.</param>
    /// <param name="heights">Of the same job: they have the rim.</param>
    public static TileReport Of(Job job, RuleBook book, IReadOnlyList<PartState> known, PanReport falls, HeightReport heights)
    {
        var metric = job.Metric == true;
        var tile = new TileTold(known, metric);
        var narrow = !(tile.Joint >= book.Materials.JointFrom?.Number.Approximate);
        var allowed = narrow ? book.Materials.LippageNarrow : book.Materials.LippageWide;
        if (FloorOf(known, falls, heights, metric) is not { } floor)
        {
            return new TileReport(null, [], allowed?.Number.Approximate, Rows(allowed), null, [], null,
                [.. falls.Missing.Concat(heights.Missing.Where(missing => missing.Key == "no-rim")).Distinct()]);
        }

        var facets = PanFacets.Of(floor.Pan, floor.Rim).Where(facet => facet.Area > 1e-9).ToList();
        var folds = FoldsOf(facets, floor.Pan.Outline);
        var worst = folds.GroupBy(fold => (Math.Round(fold.Angle, 3), Math.Round(fold.Half, 6)))
            .Select(alike => TileShifts.OnOneFold(alike.Key.Item1, alike.Key.Item2)).DefaultIfEmpty().Max();
        var sizes = (metric ? s_metric.Select(side => side / 25.4) : s_inches)
            .Select(side =>
                new TileSize(side, side * worst,
                allowed is null ? Tri.Unknown : side * worst <= allowed.Number.Approximate ? Tri.Yes : Tri.No));
        return new TileReport(
            floor.Rim,
            folds,
            allowed?.Number.Approximate,
            Rows(allowed),
            worst > 0 ? allowed?.Number.Approximate / worst : null,
            folds.Count == 0 ? [] : [.. sizes],
            tile.Grid is { } grid && floor.Pan.Grate.Radius == 0 ? Laid(facets, grid, tile, allowed?.Number.Approximate) : null,
            [.. tile.Missing]);
    }

    private static string[] Rows(MaterialFigure? figure) => figure is null ? [] : [figure.Row];

    private static (Pan Pan, double Rim)? FloorOf(IReadOnlyList<PartState> known, PanReport falls, HeightReport heights, bool metric)
    {
        var rims = heights.Lines.Where(line => line is { Group: HeightGroup.Walls, Key: "floor" })
            .Select(line => line.Height.Is.AsRead).Distinct().ToList();
        if (falls.Outline.Count == 0 || falls.Drain is not { } drain || falls.Second is not null
            || rims is not [{ IsPoint: true, Lo: { Sign: > 0 } rim }])
        {
            return null;
        }

        var outline = new Outline(falls.Outline.Select(at => new PlanPoint(at.X, at.Y)));
        var (ways, _) = DrainTold.Ways(known.FirstOrDefault(part => part.Kind == "drain")?.Facts ?? new Dictionary<string, Fact>(), metric);
        var (grate, place) = (ways.Count == 0 ? Grate.Point : ways[^1].Grate, new PlanPoint(drain.X, drain.Y));
        return outline.IsSeenWholeFrom(place) && outline.Walls.All(wall => Pan.Run(wall, place, grate) > 1e-9)
            ? (new Pan(outline, place, grate), rim.Approximate) : null;
    }

    /// <summary>Where two planes meet along a line.</summary>
    private static List<TileFold> FoldsOf(List<Facet> facets, Outline outline)
    {
        var names = new SideNames(outline);
        var folds = new List<TileFold>();
        for (var one = 0; one < facets.Count; one++)
        {
            for (var other = one + 1; other < facets.Count; other++)
            {
                var shared = facets[one].Corners.Where(at => facets[other].Corners.Any(beside => (beside - at).Length < 1e-6)).ToList();
                var half = (facets[one].Slope - facets[other].Slope).Length / 2;
                if (shared.Count == 2 && half > 1e-9)
                {
                    var way = shared[1] - shared[0];
                    var corner =
                        Enumerable.Range(0, outline.Corners.Count)
                        .Where(at => shared.Exists(end => (end - outline.Corners[at]).Length < 1e-6)).DefaultIfEmpty(-1)
                        .First();
                    var start = corner < 0 ? shared[0] : outline.Corners[corner];
                    folds.Add(new TileFold(corner < 0 ? "" : names.OfCorner(corner), new Spot(start.X, start.Y),
                        Math.Atan2(Math.Abs(way.Y), Math.Abs(way.X)) * 180 / Math.PI, half));
                }
            }
        }

        return folds;
    }

    private static TileLaid Laid(List<Facet> facets, TileGrid grid, TileTold told, double? allowed)
    {
        var misfit = new TileMisfit(facets, grid);
        var best = misfit.Tiles.Count <= SearchedAtMost && misfit.Worst is not null
            ? TileShifts.Of(facets, grid, tries: 6).Best : ((double Step, TileGrid Grid)?)null;
        return new TileLaid(
            grid.Long,
            grid.Wide,
            grid.Joint,
            told.IsDiagonal,
            misfit.WorstStep,
            misfit.Worst is { Place: var at } ? new Spot(at.X, at.Y) : null,
            misfit.Tiles.Select(tile => tile.Gap).DefaultIfEmpty().Max(),
            misfit.Tiles.Count,
            allowed is { } most ? [.. misfit.ToCut(most).Select(tile => new Spot(tile.Middle.X, tile.Middle.Y))] : [],
            best is var (step, moved)
                ? (step, Moved(moved.From - grid.From, grid.Along, grid.Long + grid.Joint),
                Moved(moved.From - grid.From, grid.Along.Turned, grid.Wide + grid.Joint)) : null);
    }

    /// <summary>The shorter way to the same grid.</summary>
    private static double Moved(PlanPoint by, PlanPoint way, double pitch) => by.Dot(way) is var far && far > pitch / 2 ? far - pitch : far;
}
