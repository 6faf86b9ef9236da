using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>A job's floor as it is to be set out: which of the limits, which way to take the drain, which rim.</summary>
/// <param name="Plan">Null: none that can be worked out; <paramref name="Why"/> says why, or something is missing.</param>
/// <param name="Grate">That the floor falls to.</param>
internal sealed record MarkedFloor(Outline? Outline, Grate Grate, DrainTaken Taken, ScreedPlan? Plan, bool GivenRim,
    string Why, (double Least, double Most)? Window)
{
    public static MarkedFloor Of(Job job, IReadOnlyList<PartState> known, PanReport falls)
    {
        var metric = job.Metric == true;
        var shower = known.FirstOrDefault(part => part.Kind == "shower")?.Facts;
        var (outline, _) = FloorTold.Of(shower?.GetValueOrDefault("outline"), shower?.GetValueOrDefault("size"), metric);
        var (place, _) = DrainTold.Place(shower?.GetValueOrDefault("drain at"), outline, metric);
        var (ways, _) = DrainTold.Ways(known.FirstOrDefault(part => part.Kind == "drain")?.Facts ?? new Dictionary<string, Fact>(), metric);
        if (outline is null || place is not { } drain || ways.Count == 0 || falls.Limits.Count == 0)
        {
            // The area counts without the place of the drain.
            return new MarkedFloor(outline, ways.Count == 0 ? Grate.Point : ways[^1].Grate,
                ways.Count == 0 ? DrainTaken.Point : ways[^1].Taken, null, false, "", null);
        }

        // A floor is made to the edge of the grate where that is known.
        return Of(outline, drain, ways[^1].Taken, ways[^1].Grate, Rim(known),
            Sets(falls.Limits, job.Codes.ContainsKey("plumbing")), TapeMarks.Of(metric));
    }

    public static FallLimits Limits(PanLimits limits) =>
        new(limits.Least.Value.Approximate, limits.Most.Value.Approximate, limits.AlongFolds ? FallMeasure.Valley : FallMeasure.Square);

    /// <param name="tiers">Sets of limits that a floor may be made for, the fullest first. Of one tier each is tried
    /// with a level rim before any with one that dips.</param>
    internal static MarkedFloor Of(Outline outline, PlanPoint drain, DrainTaken taken, Grate grate, double? rim,
        IReadOnlyList<IReadOnlyList<IReadOnlyList<FallLimits>>> tiers, TapeMarks tape)
    {
        var sets = tiers.SelectMany(tier => tier).ToList();
        var none = new MarkedFloor(outline, grate, taken, null, rim is not null, "", null);
        if (taken == DrainTaken.Channel && ChannelWall.Of(outline, drain, grate) is var (wall, depth, ends))
        {
            if (ends.Count > 0)
            {
                return none with { Taken = DrainTaken.ChannelAtWall, Why = "short-channel" };
            }

            var plane = sets.Select(set => ScreedPlan.OnePlane(outline, wall, depth, rim, set, tape))
                .FirstOrDefault(plan => plan is not null);
            return none with
            {
                Taken = DrainTaken.ChannelAtWall,
                Plan = plane,
                Why = plane is not null ? "" : outline.IsConvex ? "no-mark" : "not-drawn",
            };
        }

        if (!outline.IsSeenWholeFrom(drain) || outline.Walls.Any(one => Pan.Run(one, drain, grate) <= 1e-9))
        {
            return none with { Why = "not-seen" };
        }

        var pan = new Pan(outline, drain, grate);
        if (!RibRing.Fits(pan))
        {
            return none with { Why = "not-drawn" };
        }

        var windows = sets[0].Select(pan.RimWindow).ToList();
        none = none with { Window = (windows.Max(one => one.Least), windows.Min(one => one.Most)) };
        if (rim is { } given)
        {
            return none with { Plan = ScreedPlan.Level(pan, given, sets[0], tape) };
        }

        var plan = tiers.SelectMany(tier => tier.Select(set => ScreedPlan.Level(pan, set, tape))
            .Concat(tier.Select(set => ScreedPlan.Dipped(pan, set, tape)))).FirstOrDefault(one => one is not null);
        return none with { Plan = plan, Why = plan is null ? "no-mark" : "" };
    }

    /// <summary>
    /// All together, or those that nobody disputes; with no code stated also each alone, since codes that are only
    /// tried may contradict each other.
    /// </summary>
    private static IReadOnlyList<IReadOnlyList<IReadOnlyList<FallLimits>>> Sets(IReadOnlyList<PanLimits> limits, bool isStated)
    {
        IReadOnlyList<FallLimits> all = [.. limits.Select(Limits)];
        IReadOnlyList<FallLimits> agreed = [.. limits.Where(one => !one.Disputed).Select(Limits)];
        IReadOnlyList<IReadOnlyList<FallLimits>> together = agreed.Count == 0 || agreed.Count == all.Count ? [all] : [all, agreed];
        return isStated ? [together] : [together, [.. all.Select(one => new[] { one })]];
    }

    /// <summary>Of a level rim, where the job says one; a bound says none.</summary>
    private static double? Rim(IReadOnlyList<PartState> known) =>
        known.FirstOrDefault(part => part.Kind == "floor")?.Facts.GetValueOrDefault("rim")
            ?.OnPaper is Known.Number { Spread.AsRead: { IsPoint: true, Lo: { Sign: > 0 } rim } } ? rim.Approximate
            : null;
}
