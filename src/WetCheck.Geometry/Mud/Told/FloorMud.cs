using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The mortar of a job's floor.</summary>
public static class FloorMud
{
    /// <param name="known">All parts of the job, as <see cref="Derive.From"/> gives them. Plans count.</param>
    /// <param name="falls">Of the same job.</param>
    public static MudReport Of(Job job, RuleBook book, IReadOnlyList<PartState> known, PanReport falls)
    {
        var (floor, told, metric) = (MarkedFloor.Of(job, known, falls), new LayersTold(job, known), job.Metric == true);
        IEnumerable<PanMissing> missing = [.. falls.Missing, .. told.Missing(forMarks: false)];
        if (floor.Outline is not { } outline || told.Built is null && job.Method is not null)
        {
            return new MudReport(null, null, null, told.Built, [], null, [.. missing]);
        }

        var (fall, rim) = (floor.Plan?.Volume, floor.Plan?.Highest);
        if (floor.Why == "no-mark")
        {
            missing = missing.Append(MissingLine.Of("no-rim", MissingLine.Rim, metric));
        }

        var area = Area(outline, floor);
        var mud = new MudVolumes(area, fall, rim, book.Materials);
        var ways = new[] { BuiltAs.LinerUnderMortar, BuiltAs.BondedMembrane, BuiltAs.FormedTray }
            .OrderBy(built => built == told.Built ? 0 : 1)
            .Select(built => mud.Of(built, told.PreSlope, told.Bed, built == told.Built ? told.UnderLiner : null));
        return new MudReport(area, fall, rim, told.Built, [.. ways], Water(area, fall, floor.Plan, book.Materials), [.. missing]);
    }

    /// <summary>Nothing lies over the grate; of a channel along a wall, nor in the gap behind it.</summary>
    private static double Area(Outline outline, MarkedFloor floor) => floor.Taken == DrainTaken.ChannelAtWall && floor.Plan is { } plane
        ? Outline.AreaOf(Clip.Keep(outline.Corners,
            point => (point - plane.Ribs[0].End).Dot((plane.Ribs[0].Wall - plane.Ribs[0].End).Unit)))
        : outline.Area - floor.Grate.Area;

    /// <summary>As deep at the lowest of the rim as a test asks: more by the fall, less by what mortar fills of it.</summary>
    private static MudWater? Water(double area, double? fall, ScreedPlan? plan, Materials materials)
    {
        if (materials.TestDepth is not { Number.Approximate: var depth } || plan is null || fall is not { } filled)
        {
            return null;
        }

        var volume = (area * (depth + plan.Lowest)) - filled;
        return new MudWater(depth, volume, materials.Water is { } water ? volume / MudAmounts.InchOnFoot * water.Number.Approximate : null);
    }
}
