using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>Levels of a job's floor: falls with bounds, low spots, what to add or shave, what to read again.</summary>
public static class FloorLevels
{
    private const double Eighth = 1 / 8d;
    private const double FiveMillimetres = 5 / 25.4;

    /// <param name="known">All parts of the job, as <see cref="Derive.From"/> gives them.</param>
    /// <param name="falls">Of the same job: its limits, and what of floor and drain is not known.</param>
    public static LevelReport Of(Job job, IReadOnlyList<PartState> known, PanReport falls)
    {
        var metric = job.Metric == true;
        var fact = known.FirstOrDefault(part => part.Kind == "floor")?.Facts.GetValueOrDefault("levels");
        if (fact?.OnPaper is not Known.Levels levels || falls.Outline.Count == 0)
        {
            var count = (fact?.OnPaper as Known.Levels)?.Points.All.Count ?? 0;
            PanMissing[] none =
                count > 0 ? []
                : [MissingLine.Of(fact is { Clash: true } ? "levels-clash" : "no-levels", MissingLine.Levels, metric)];
            return new LevelReport(count, (fact?.OnPaper as Known.Levels)?.Half.Approximate, null, [], [], [], [], [],
                [], [.. none, .. falls.Missing]);
        }

        var outline = new Outline(falls.Outline.Select(corner => new PlanPoint(corner.X, corner.Y)));
        PlanPoint? drain = falls.Drain is { } at ? new PlanPoint(at.X, at.Y) : null;
        var (ways, _) = DrainTold.Ways(known.FirstOrDefault(part => part.Kind == "drain")?.Facts ?? new Dictionary<string, Fact>(), metric);
        var (all, grates) = (LevelsTold.Of(levels), SetOut.Of(ways));
        var (points, doubts) = LevelDoubts.Of(all, outline);
        var (surface, planes) =
            (new LevelSurface(points, outline),
            new LevelPlanes(outline, falls.Second is null ? drain : null, grates, points, falls.Limits));
        var alone = planes.Facets.SelectMany(facet => facet.Alone(points)).Distinct().ToList();
        var places = new[] { falls.Drain, falls.Second }.OfType<Spot>().Select(one => new PlanPoint(one.X, one.Y)).ToList();
        var drains =
            Enumerable.Range(0, points.Count)
            .Where(one => places.Exists(place => SetOut.IsAtDrain(grates, place, points[one].At))).ToList();
        return new LevelReport(
            all.Count,
            levels.Half.Approximate,
            double.IsFinite(surface.Spacing) ? surface.Spacing : null,
            planes.All(points),
            [.. LowSpots.Of(surface, drains).Where(spot => spot.Most > 0)
                .Select(spot =>
                new LevelPond(Spot(spot.At), spot.Depth, spot.Least, spot.Most, spot.Area, spot.Volume))],
            [.. Flat(planes, points, falls.Limits)],
            [.. planes.Facets.SelectMany(facet => Bumps.Of(facet, surface)).DistinctBy(bump => bump.At)
                .OrderByDescending(bump => Math.Abs(bump.Off))
                .Select(bump => new LevelBump(Spot(bump.At), bump.Off, bump.Readings))],
            [.. doubts.Select(doubt =>
                new LevelAgain(doubt.Why == LevelDoubtKind.Twice ? "twice" : "outside", Spot(all[doubt.Point].At))),
                .. alone.Select(one => new LevelAgain("alone", Spot(points[one].At)))],
            [.. Lines(surface, drains, metric)],
            [.. falls.Missing,
                .. (PanMissing[])(drains.Count == 0 && drain is not null
                ? [MissingLine.Of("no-level-at-drain", MissingLine.Levels, metric)] : [])])
        {
            FirstOut = drains.Count > 0 && FirstOut.Of(surface, outline, points[drains[0]].At) is var (edge, level)
                ? (Spot(edge), level - points[drains[0]].Height) : null,
        };
    }

    /// <summary>Flatter than the least that anyone reads square to a wall.</summary>
    private static IEnumerable<LevelFlat> Flat(LevelPlanes planes, IReadOnlyList<LevelPoint> points, IReadOnlyList<PanLimits> limits)
    {
        var least = limits.Where(limit => !limit.AlongFolds).Select(limit => limit.Least.Value.Approximate).DefaultIfEmpty(0).Min();
        return planes.Facets.SelectMany(facet => Flats.Of(facet, points, least)).Select(flat => new LevelFlat(Spot(flat.At), flat.Most));
    }

    private static IEnumerable<LevelContour> Lines(LevelSurface surface, List<int> drains, bool metric)
    {
        if (surface.Triangles.Count == 0)
        {
            return [];
        }

        var zero = (drains.Count > 0 ? drains : Enumerable.Range(0, surface.Points.Count)).Min(at => surface.Points[at].Height);
        return Contours.Of(surface, zero, metric ? FiveMillimetres : Eighth)
            .Select(line => new LevelContour(line.Height - zero, [.. line.Line.Select(Spot)]));
    }

    private static Spot Spot(PlanPoint at) => new(at.X, at.Y);
}
