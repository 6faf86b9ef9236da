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
        var (ways, notTold) =
            DrainTold.Ways(known.FirstOrDefault(part => part.Kind == "drain")?.Facts ?? new Dictionary<string, Fact>(),
            metric);
        var (limits, without) = LimitsInForce.Of(book, known);
        var (second, noSecond) =
            shower?.GetValueOrDefault("second drain at") is { IsBlank: false } at ? DrainTold.Place(at, outline, metric)
            : (null, null);
        var cut = outline is not null && place is { } one && second is { } two ? FloorCut.Between(outline, one, two) : null;
        var parts = cut is null ? [] : TwoParts.Of(cut, place!.Value, second!.Value);
        PanMissing?[] missing =
            [noFloor, noPlace, noSecond is null ? null : noSecond with { Line = MissingLine.SecondDrainAt },
            second is not null && parts.Count == 0 ? MissingLine.Of("no-ridge", MissingLine.SecondDrainAt, metric)
            : null, .. notTold, limits.Count == 0 ? MissingLine.Of("no-limits", MissingLine.Code, metric) : null];
        return new PanReport(
            outline is null ? [] : [.. outline.Corners.Select(corner => new Spot(corner.X, corner.Y))],
            outline is null ? [] : new FloorCase(outline, metric).Sides,
            place is { } drain ? new Spot(drain.X, drain.Y) : null,
            [.. missing.OfType<PanMissing>()],
            limits,
            without,
            outline is null ? []
                : parts.Count > 0
                    ? [.. parts.SelectMany(part =>
                    Cases(new FloorCase(part.Outline, metric, part.Beyond), limits, ways, part.Drain))]
                : [.. Cases(new FloorCase(outline, metric), limits, ways, place)])
        {
            Second = second is { } other ? new Spot(other.X, other.Y) : null,
            Circle = outline is null ? null : InscribedCircle.Of(outline) is var circle
                ? (new Spot(circle.Middle.X, circle.Middle.Y), 2 * circle.Radius) : null,
            Ridge = cut is null || parts.Count == 0 ? null : (new Spot(cut.From.X, cut.From.Y), new Spot(cut.To.X, cut.To.Y)),
        };
    }

    private static IEnumerable<PanCase> Cases(FloorCase floor, IReadOnlyList<PanLimits> limits,
        IReadOnlyList<(DrainTaken Taken, Grate Grate)> ways, PlanPoint? place) =>
        from limit in limits
        from way in ways
        select floor.Of(limit, way.Taken, way.Grate, place);
}
