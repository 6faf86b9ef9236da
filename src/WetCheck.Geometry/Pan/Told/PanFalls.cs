using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The falls of a job's floor: each limit that may be in force, with each way to take the drain.</summary>
public static class PanFalls
{
    /// <param name="known">All parts of the job, as <see cref="Derive.From"/> gives them. Plans count.</param>
    public static PanReport Of(Job job, RuleBook book, IReadOnlyList<PartState> known)
    {
        var metric = job.Metric == true;
        var shower = known.FirstOrDefault(part => part.Kind == "shower")?.Facts;
        var (outline, noFloor) = FloorTold.Of(shower?.GetValueOrDefault("outline"), shower?.GetValueOrDefault("size"), metric);
        var (place, noPlace) = DrainTold.Place(shower?.GetValueOrDefault("drain at"), outline, metric);
        var (ways, notTold) = DrainTold.Ways(known.FirstOrDefault(part => part.Kind == "drain")?.Facts ?? new Dictionary<string, Fact>(), metric);
        var (limits, without) = LimitsInForce.Of(book, known);
        PanMissing?[] missing = [noFloor, noPlace, .. notTold, limits.Count == 0 ? MissingLine.Of("no-limits", MissingLine.Code, metric) : null];
        return new PanReport(
            outline is null ? [] : [.. outline.Corners.Select(corner => new Spot(corner.X, corner.Y))],
            outline is null ? [] : new FloorCase(outline, metric).Sides,
            place is { } drain ? new Spot(drain.X, drain.Y) : null,
            [.. missing.OfType<PanMissing>()],
            limits,
            without,
            outline is null ? [] : [.. Cases(new FloorCase(outline, metric), limits, ways, place)]);
    }

    private static IEnumerable<PanCase> Cases(FloorCase floor, IReadOnlyList<PanLimits> limits, IReadOnlyList<(DrainTaken Taken, Grate Grate)> ways, PlanPoint? place) =>
        from limit in limits
        from way in ways
        select floor.Of(limit, way.Taken, way.Grate, place);
}
