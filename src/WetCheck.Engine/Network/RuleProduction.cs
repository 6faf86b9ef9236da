using System.Linq.Expressions;
using System.Reflection;
using NRules.RuleModel;
using NRules.RuleModel.Builders;
using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>
/// Rules of the same joins as one production: a part of their kind, joined with the nearest part of each kind they read, the parts
/// their relations name, and the conclusions they look at; it keeps one linked finding or conclusion for each. No priorities, no
/// negation: the order of firing does not matter.
/// </summary>
internal static class RuleProduction
{
    private static readonly PropertyInfo PartOf = typeof(PartState).GetProperty(nameof(PartState.Part))!;
    private static readonly PropertyInfo KindOf = typeof(PartState).GetProperty(nameof(PartState.Kind))!;
    private static readonly MethodInfo HasKind = ((Func<PartState, Names, bool>)Names.HasKind).Method;
    private static readonly MethodInfo HasReading = ((Func<Conclusion, Names, bool>)Names.HasReading).Method;
    private static readonly MethodInfo Reads = ((Func<Joins, Part, Part, bool>)Joins.Reads).Method;
    private static readonly MethodInfo Relates = ((Func<Joins, Part, Part, bool>)Joins.Relates).Method;
    private static readonly Expression NoParts = Expression.Constant(Array.Empty<PartState>(), typeof(IEnumerable<PartState>));
    private static readonly Expression NoConclusions = Expression.Constant(Array.Empty<Conclusion>(), typeof(IEnumerable<Conclusion>));
    private static readonly MethodInfo Upsert =
        ((Action<IContext, PartState, IEnumerable<PartState>, IEnumerable<PartState>, IEnumerable<Conclusion>,
            PlanGroup, Cut>)Judged).Method;

    public static IRuleDefinition Build(PlanGroup group, Cut cut)
    {
        var builder = new RuleBuilder();
        builder.Name(group.First.Rule.Id);
        var left = builder.LeftHandSide();
        var pattern = left.Pattern(typeof(PartState), "self");
        var self = pattern.Declaration.ToParameterExpression();
        pattern.Condition(Expression.Lambda<Func<PartState, bool>>(
            Expression.Equal(Expression.Property(self, KindOf), Expression.Constant(group.Part)), self));

        var nearest = Collect(left, self, "nearest", Off(cut, CutWhat.Nearest) ? Names.None : group.Joins.Nearest, group.Joins, Reads);
        var related =
            Collect(left, self, "related", Off(cut, CutWhat.Related) ? Names.None : group.Joins.RelatedKinds,
            group.Joins, Relates);
        var conclusions = Conclusions(left, Off(cut, CutWhat.Conclusions) ? Names.None : group.Conclusions);

        var context = Expression.Parameter(typeof(IContext), "context");
        var call = Expression.Call(Upsert, context, self, nearest ?? NoParts, related ?? NoParts, conclusions ?? NoConclusions,
            Expression.Constant(group), Expression.Constant(cut));
        builder.RightHandSide().Action(ActionOf(call, context, self, nearest, related, conclusions));
        return builder.Build();
    }

    /// <summary>The parts of some kinds that stand to self as the rules say; null where they name no kind.</summary>
    private static ParameterExpression? Collect(
        GroupBuilder left, ParameterExpression self, string name, Names kinds, Joins joins, MethodInfo join)
    {
        if (kinds == Names.None)
        {
            return null;
        }

        var all = left.Pattern(typeof(IEnumerable<PartState>), name);
        var aggregate = all.Aggregate();
        aggregate.Collect();
        var one = aggregate.Pattern(typeof(PartState), name + " one");
        var part = one.Declaration.ToParameterExpression();
        one.Condition(Expression.Lambda<Func<PartState, bool>>(Expression.Call(HasKind, part, Expression.Constant(kinds)), part));
        one.Condition(Expression.Lambda<Func<PartState, PartState, bool>>(
            Expression.Call(join, Expression.Constant(joins), Expression.Property(self, PartOf),
                Expression.Property(part, PartOf)), part, self));
        return all.Declaration.ToParameterExpression();
    }

    private static ParameterExpression? Conclusions(GroupBuilder left, Names readings)
    {
        if (readings == Names.None)
        {
            return null;
        }

        var all = left.Pattern(typeof(IEnumerable<Conclusion>), "conclusions");
        var aggregate = all.Aggregate();
        aggregate.Collect();
        var one = aggregate.Pattern(typeof(Conclusion), "conclusion");
        var conclusion = one.Declaration.ToParameterExpression();
        one.Condition(Expression.Lambda<Func<Conclusion,
            bool>>(Expression.Call(HasReading, conclusion, Expression.Constant(readings)), conclusion));
        return all.Declaration.ToParameterExpression();
    }

    /// <summary>What is not joined is no parameter. Each delegate stands here by name: none can be made up in a native build.</summary>
    private static LambdaExpression ActionOf(
        Expression call, ParameterExpression context, ParameterExpression self,
        ParameterExpression? nearest, ParameterExpression? related, ParameterExpression? conclusions)
    {
        var given = new[] { context, self, nearest, related, conclusions }.OfType<ParameterExpression>().ToArray();
        return (given.Length - (conclusions is null ? 2 : 3), conclusions is not null) switch
        {
            (0, false) => Expression.Lambda<Action<IContext, PartState>>(call, given),
            (1, false) => Expression.Lambda<Action<IContext, PartState, IEnumerable<PartState>>>(call, given),
            (_, false) => Expression.Lambda<Action<IContext, PartState, IEnumerable<PartState>, IEnumerable<PartState>>>(call, given),
            (0, true) => Expression.Lambda<Action<IContext, PartState, IEnumerable<Conclusion>>>(call, given),
            (1, true) => Expression.Lambda<Action<IContext, PartState, IEnumerable<PartState>, IEnumerable<Conclusion>>>(call, given),
            _ => Expression.Lambda<Action<IContext, PartState, IEnumerable<PartState>, IEnumerable<PartState>,
                IEnumerable<Conclusion>>>(call, given),
        };
    }

    private static void Judged(
        IContext context, PartState self, IEnumerable<PartState> nearest, IEnumerable<PartState> related,
            IEnumerable<Conclusion> conclusions, PlanGroup group, Cut cut)
    {
        var scene = SceneOf(group.First, self,
            Off(cut, CutWhat.Nearest) ? cut.First.Where(state => Joins.Reads(group.Joins, self.Part, state.Part)) : nearest,
            Off(cut, CutWhat.Related) ? cut.First.Where(state => Joins.Relates(group.Joins, self.Part, state.Part)) : related,
            conclusions);
        Linked.Keep(context, [.. Concluded(scene, group), .. Found(scene, group)]);
    }

    private static IEnumerable<(object Key, object Fact)> Concluded(Scene scene, PlanGroup group) => group.Plans
        .Where(plan => plan.Rule.Body is RuleBody.Conclude)
        .Select(plan => ((object)plan.Rule, (object)Judge.Conclude(scene with { Plan = plan })));

    /// <summary>All findings as one fact: no rule looks at them, and a session pays for each of its facts.</summary>
    private static IEnumerable<(object Key, object Fact)> Found(Scene scene, PlanGroup group)
    {
        var found = group.Plans.Where(plan => plan.Rule.Body is not RuleBody.Conclude)
            .Select(plan => new Finding(plan.Rule, scene.Self, Judge.Of(scene with { Plan = plan }))).ToArray();
        return found.Length == 0 ? [] : [(group, new PartFindings(scene.Self, found))];
    }

    /// <summary>The parts in the order of the plan, whatever order a session handed them over in.</summary>
    public static Scene SceneOf(RulePlan plan, PartState self, IEnumerable<PartState> nearest,
        IEnumerable<PartState> related, IEnumerable<Conclusion> conclusions)
    {
        var near = nearest.ToList();
        return new Scene(plan, self,
            [.. plan.Nearest.Select(kind => near.First(state => state.Kind == kind))],
            [.. related.OrderBy(state => state.Part.IsOther).ThenBy(state => state.Part.Index ?? 0)
                .ThenBy(state => state.Part.Id, StringComparer.Ordinal)],
            [.. conclusions.OrderBy(one => one.Part.Id, StringComparer.Ordinal).ThenBy(one => one.Rule?.Number ?? 0)]);
    }

    private static bool Off(Cut cut, CutWhat what) => cut.What == what;
}
