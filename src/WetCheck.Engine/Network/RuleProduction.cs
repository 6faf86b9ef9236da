using System.Linq.Expressions;
using System.Reflection;
using NRules.RuleModel;
using NRules.RuleModel.Builders;
using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>
/// One rule as a production: a part of its kind, joined with the nearest part of each kind it reads, the parts its relations name,
/// and the conclusions it looks at; it keeps one linked finding or conclusion. No priorities, no negation: the order of firing
/// does not matter.
/// </summary>
internal static class RuleProduction
{
    private const string Linked = "it";
    private static readonly PropertyInfo PartOf = typeof(PartState).GetProperty(nameof(PartState.Part))!;
    private static readonly PropertyInfo KindOf = typeof(PartState).GetProperty(nameof(PartState.Kind))!;
    private static readonly MethodInfo HasKind = ((Func<PartState, Names, bool>)Names.HasKind).Method;
    private static readonly MethodInfo HasReading = ((Func<Conclusion, Names, bool>)Names.HasReading).Method;
    private static readonly MethodInfo Reads = ((Func<Joins, Part, Part, bool>)Joins.Reads).Method;
    private static readonly MethodInfo Names_ = ((Func<Joins, Part, Part, bool>)Joins.Relates).Method;
    private static readonly MethodInfo Upsert =
        ((Action<IContext, PartState, IEnumerable<PartState>, IEnumerable<PartState>, IEnumerable<Conclusion>, RulePlan, Cut>)Judged).Method;

    public static IRuleDefinition Build(RulePlan plan, Cut cut)
    {
        var builder = new RuleBuilder();
        builder.Name(plan.Rule.Id);
        var left = builder.LeftHandSide();
        var pattern = left.Pattern(typeof(PartState), "self");
        var self = pattern.Declaration.ToParameterExpression();
        pattern.Condition(Expression.Lambda<Func<PartState, bool>>(
            Expression.Equal(Expression.Property(self, KindOf), Expression.Constant(plan.Rule.Part.Name)), self));

        var joins = Expression.Constant(new Joins(plan));
        var nearest = Collect(left, self, "nearest", Off(cut, CutWhat.Nearest) ? [] : plan.Nearest, joins, Reads);
        var related = Collect(left, self, "related", Off(cut, CutWhat.Related) ? [] : plan.Relations.Select(relation => relation.Kind ?? plan.Rule.Part.Name), joins, Names_);
        var conclusions = Conclusions(left, Off(cut, CutWhat.Conclusions) ? [] : plan.Conclusions);

        var context = Expression.Parameter(typeof(IContext), "context");
        builder.RightHandSide().Action(Expression.Lambda<Action<IContext, PartState, IEnumerable<PartState>, IEnumerable<PartState>, IEnumerable<Conclusion>>>(
            Expression.Call(Upsert, context, self, nearest, related, conclusions, Expression.Constant(plan), Expression.Constant(cut)),
            context, self, nearest, related, conclusions));
        return builder.Build();
    }

    /// <summary>The parts of some kinds that stand to self as the rule says; none where it names no kind.</summary>
    private static ParameterExpression Collect(
        GroupBuilder left, ParameterExpression self, string name, IEnumerable<string> kinds, ConstantExpression joins, MethodInfo join)
    {
        var all = left.Pattern(typeof(IEnumerable<PartState>), name);
        var aggregate = all.Aggregate();
        aggregate.Collect();
        var one = aggregate.Pattern(typeof(PartState), name + " one");
        var part = one.Declaration.ToParameterExpression();
        one.Condition(Expression.Lambda<Func<PartState, bool>>(Expression.Call(HasKind, part, Expression.Constant(Names.Of(kinds))), part));
        one.Condition(Expression.Lambda<Func<PartState, PartState, bool>>(
            Expression.Call(join, joins, Expression.Property(self, PartOf), Expression.Property(part, PartOf)), part, self));
        return all.Declaration.ToParameterExpression();
    }

    private static ParameterExpression Conclusions(GroupBuilder left, IEnumerable<string> readings)
    {
        var all = left.Pattern(typeof(IEnumerable<Conclusion>), "conclusions");
        var aggregate = all.Aggregate();
        aggregate.Collect();
        var one = aggregate.Pattern(typeof(Conclusion), "conclusion");
        var conclusion = one.Declaration.ToParameterExpression();
        one.Condition(Expression.Lambda<Func<Conclusion, bool>>(Expression.Call(HasReading, conclusion, Expression.Constant(Names.Of(readings))), conclusion));
        return all.Declaration.ToParameterExpression();
    }

    private static void Judged(
        IContext context, PartState self, IEnumerable<PartState> nearest, IEnumerable<PartState> related, IEnumerable<Conclusion> conclusions, RulePlan plan, Cut cut)
    {
        var scene = SceneOf(plan, self,
            Off(cut, CutWhat.Nearest) ? cut.First.Where(state => Joins.Reads(new Joins(plan), self.Part, state.Part)) : nearest,
            Off(cut, CutWhat.Related) ? cut.First.Where(state => Joins.Relates(new Joins(plan), self.Part, state.Part)) : related,
            conclusions);
        object fact = plan.Rule.Body is RuleBody.Conclude ? Judge.Conclude(scene) : new Finding(plan.Rule, self, Judge.Of(scene));
        Link(context, fact);
    }

    /// <summary>The parts in the order of the plan, whatever order a session handed them over in.</summary>
    public static Scene SceneOf(RulePlan plan, PartState self, IEnumerable<PartState> nearest, IEnumerable<PartState> related, IEnumerable<Conclusion> conclusions)
    {
        var near = nearest.ToList();
        return new Scene(plan, self,
            [.. plan.Nearest.Select(kind => near.First(state => state.Kind == kind))],
            [.. related.OrderBy(state => state.Part.IsOther).ThenBy(state => state.Part.Index ?? 0).ThenBy(state => state.Part.Id, StringComparer.Ordinal)],
            [.. conclusions.OrderBy(one => one.Part.Id, StringComparer.Ordinal).ThenBy(one => one.Rule?.Number ?? 0)]);
    }

    /// <summary>Keeps one linked fact of an activation: inserted, or replaced when it says something else.</summary>
    public static void Link(IContext context, object fact)
    {
        var earlier = context.GetLinked(Linked);
        if (earlier is null)
        {
            context.InsertLinked(Linked, fact);
        }
        else if (earlier is not Conclusion before || fact is not Conclusion now || !before.SameAs(now))
        {
            context.UpdateLinked(Linked, fact);
        }
    }

    private static bool Off(Cut cut, CutWhat what) => cut.What == what;
}
