namespace WetCheck.Engine;

/// <summary>Rules of one kind of part that read the same other parts and the same conclusions: what joins one joins all.</summary>
/// <param name="Plans">At least one.</param>
internal sealed record PlanGroup(string Part, Joins Joins, Names Conclusions, IReadOnlyList<RulePlan> Plans)
{
    public RulePlan First => Plans[0];

    /// <summary>In the order in which the first rule of each stands.</summary>
    public static IEnumerable<PlanGroup> Gather(IEnumerable<RulePlan> plans) => plans
        .GroupBy(plan => (plan.Rule.Part.Name, new Joins(plan), Names.Of(plan.Conclusions.Order(StringComparer.Ordinal))))
        .Select(group => new PlanGroup(group.Key.Item1, group.Key.Item2, group.Key.Item3, [.. group]));
}
