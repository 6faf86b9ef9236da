using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The floor of a job as it can be drawn.</summary>
public static class FloorPlans
{
    /// <param name="known">All parts of the job, as <see cref="Derive.From"/> gives them. Plans count.</param>
    public static FloorPlan Of(Job job, IEnumerable<PartState> known)
    {
        var parts = known.Where(part => part.Kind is "shower" or "drain").ToDictionary(part => part.Kind, part => part.Facts);
        var shower = parts.GetValueOrDefault("shower");
        var (outline, _) = FloorTold.Of(shower?.GetValueOrDefault("outline"), shower?.GetValueOrDefault("size"), job.Metric == true);
        if (outline is null)
        {
            return FloorPlan.Unknown;
        }

        var names = new SideNames(outline);
        var (place, _) = DrainTold.Place(shower?.GetValueOrDefault("drain at"), outline, job.Metric == true);
        var (ways, _) = DrainTold.Ways(parts.GetValueOrDefault("drain") ?? new Dictionary<string, Fact>(), job.Metric == true);
        var grate = ways.Where(way => way.Taken != DrainTaken.Point).Select(way => way.Grate).FirstOrDefault();
        return new FloorPlan(
            [.. outline.Corners.Select(At)],
            [.. names.Clockwise.Select(wall => new PlanSide(names.Of(wall), At(outline.Walls[wall].From), At(outline.Walls[wall].To)))],
            place is { } drain ? At(drain) : null,
            place is { } middle && grate is not null
                ? new GratePlan([.. grate.Corners.Select(corner => At(middle + corner))], grate.Radius) : null);
    }

    private static Spot At(PlanPoint point) => new(point.X, point.Y);
}
