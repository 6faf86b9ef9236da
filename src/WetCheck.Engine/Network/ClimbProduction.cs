using System.Linq.Expressions;
using System.Reflection;
using NRules.RuleModel;
using NRules.RuleModel.Builders;
using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>One concluded reading and one kind above: the part above is what the greatest conclusion below it is.</summary>
internal static class ClimbProduction
{
    private static readonly PropertyInfo KindOf = typeof(PartState).GetProperty(nameof(PartState.Kind))!;
    private static readonly MethodInfo HasReading = ((Func<Conclusion, Names, bool>)Names.HasReading).Method;
    private static readonly MethodInfo Below = ((Func<PartState, Conclusion, bool>)IsBelow).Method;
    private static readonly MethodInfo Climbed = ((Action<IContext, PartState, IEnumerable<Conclusion>, Names>)Climb).Method;

    public static IRuleDefinition Build(string reading, string kind)
    {
        var builder = new RuleBuilder();
        builder.Name($"{reading} climbs to {kind}");
        var left = builder.LeftHandSide();
        var pattern = left.Pattern(typeof(PartState), "above");
        var above = pattern.Declaration.ToParameterExpression();
        pattern.Condition(Expression.Lambda<Func<PartState,
            bool>>(Expression.Equal(Expression.Property(above, KindOf), Expression.Constant(kind)), above));

        var names = Expression.Constant(new Names(reading));
        var all = left.Pattern(typeof(IEnumerable<Conclusion>), "all");
        var conclusions = all.Declaration.ToParameterExpression();
        var aggregate = all.Aggregate();
        aggregate.Collect();
        var one = aggregate.Pattern(typeof(Conclusion), "one");
        var conclusion = one.Declaration.ToParameterExpression();
        one.Condition(Expression.Lambda<Func<Conclusion, bool>>(Expression.Call(HasReading, conclusion, names), conclusion));
        one.Condition(Expression.Lambda<Func<Conclusion, PartState, bool>>(Expression.Call(Below, above, conclusion), conclusion, above));

        var context = Expression.Parameter(typeof(IContext), "context");
        builder.RightHandSide().Action(Expression.Lambda<Action<IContext, PartState, IEnumerable<Conclusion>>>(
            Expression.Call(Climbed, context, above, conclusions, names), context, above, conclusions));
        return builder.Build();
    }

    /// <summary>Only what a rule concluded climbs, not what climbed before it.</summary>
    public static bool IsBelow(PartState above, Conclusion conclusion) =>
        conclusion.Rule is not null && conclusion.Part != above.Part && conclusion.Part.Nearest(above.Kind) == above.Part;

    public static Conclusion Greatest(PartState above, string reading, IReadOnlyList<Conclusion> below)
    {
        var (now, paper) = (Max(onPaper: false), Max(onPaper: true));
        return new Conclusion(above.Part, reading, null, now, paper, HangsOf(now, onPaper: false), HangsOf(paper, onPaper: true));

        Tri Max(bool onPaper) => below.Select(one => one.Given(onPaper)).DefaultIfEmpty(Tri.No).Max();

        IReadOnlyList<Hang> HangsOf(Tri value, bool onPaper) => value != Tri.Unknown ? [] : [.. below
            .Where(one => one.Given(onPaper) == Tri.Unknown)
            .OrderBy(one => one.Part.Id, StringComparer.Ordinal)
            .SelectMany(one => onPaper ? one.HangsOnPaper : one.Hangs)
            .Distinct()];
    }

    private static void Climb(IContext context, PartState above, IEnumerable<Conclusion> below, Names reading) =>
        Linked.Keep(context, [(reading, Greatest(above, reading.Joined, [.. below]))]);
}
