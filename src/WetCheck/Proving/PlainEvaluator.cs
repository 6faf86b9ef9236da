using WetCheck.Engine;
using WetCheck.Model;

namespace WetCheck.Proving;

/// <summary>
/// The rule book without a network: rule by rule, part by part. Concluding rules first, those whose conclusions others read
/// before the others; after each reading its climbs; then the rest.
/// </summary>
internal sealed class PlainEvaluator(IReadOnlyList<Rule> rules)
{
    private readonly IReadOnlyList<RulePlan> _plans = [.. rules.Select(rule => new RulePlan(rule))];
    private readonly Dictionary<Rule, RulePlan> _planOf = rules.ToDictionary(rule => rule, rule => new RulePlan(rule));

    public (IReadOnlyList<Finding> Findings, IReadOnlyList<Conclusion> Conclusions) Of(IReadOnlyList<PartState> states)
    {
        var conclusions = Conclude(states);
        return ([.. _plans.Where(plan => plan.Rule.Body is not RuleBody.Conclude)
            .SelectMany(plan => Judged(plan, states, conclusions))], conclusions);
    }

    /// <summary>One rule on one part.</summary>
    public Judgement Of(Rule rule, PartState self, IReadOnlyList<PartState> states, IReadOnlyList<Conclusion> conclusions) =>
        Judge.Of(SceneOf(_planOf[rule], self, states, conclusions));

    /// <summary>One rule on all its parts.</summary>
    public static IEnumerable<Finding> Judged(RulePlan plan, IReadOnlyList<PartState> states, IReadOnlyList<Conclusion> conclusions) =>
        Scenes(plan, states, conclusions).Select(scene => new Finding(plan.Rule, scene.Self, Judge.Of(scene)));

    public static IEnumerable<Scene> Scenes(RulePlan plan, IReadOnlyList<PartState> states, IReadOnlyList<Conclusion> conclusions) => states
        .Where(state => state.Part.Kind == plan.Rule.Part)
        .Select(self => SceneOf(plan, self, states, conclusions));

    public IReadOnlyList<Conclusion> Conclude(IReadOnlyList<PartState> states)
    {
        var conclusions = new List<Conclusion>();
        var waiting = _plans.Where(plan => plan.Rule.Body is RuleBody.Conclude).ToList();
        while (waiting.Count > 0)
        {
            var readings = waiting.Select(Reading).ToHashSet(StringComparer.Ordinal);
            var next = waiting.Where(plan => waiting.Where(other => Reading(other) == Reading(plan))
                .All(same => !same.Conclusions.Any(readings.Contains))).ToList();
            foreach (var plan in next)
            {
                conclusions.AddRange(Scenes(plan, states, conclusions).Select(Judge.Conclude).ToList());
            }

            foreach (var (reading, kind) in next.SelectMany(Climbs).Distinct())
            {
                conclusions.AddRange(states.Where(state => state.Kind == kind)
                    .Select(above => Climbed(above, reading, conclusions)).ToList());
            }

            waiting = [.. waiting.Except(next)];
        }

        return conclusions;
    }

    private static string Reading(RulePlan plan) => ((RuleBody.Conclude)plan.Rule.Body).Reading.Name;

    private static IEnumerable<(string Reading, string Kind)> Climbs(RulePlan plan) =>
        ((RuleBody.Conclude)plan.Rule.Body).Climbs.Select(kind => (Reading(plan), kind));

    private static Conclusion Climbed(PartState above, string reading, List<Conclusion> conclusions) =>
        ClimbProduction.Greatest(above, reading,
            [.. conclusions.Where(one => one.Reading == reading && ClimbProduction.IsBelow(above, one))]);

    private static Scene SceneOf(RulePlan plan, PartState self, IReadOnlyList<PartState> states, IReadOnlyList<Conclusion> conclusions) =>
        RuleProduction.SceneOf(plan, self,
            [.. plan.Nearest.Select(kind => states.First(state => Relations.IsNearest(self.Part, state.Part, kind)))],
            states.Where(state => plan.Relations.Any(relation => Relations.Holds(relation, self.Part, state.Part))),
            conclusions.Where(one => plan.Conclusions.Contains(one.Reading)));
}
