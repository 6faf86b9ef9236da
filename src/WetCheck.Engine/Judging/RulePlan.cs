using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>What a rule looks at, worked out once for a book.</summary>
public sealed class RulePlan
{
    public RulePlan(Rule rule)
    {
        Rule = rule;
        Conditions = [.. rule.Conditions()];
        var paths = Conditions.SelectMany(PathsOf).ToList();
        var kinds = paths.Select(path => path.Kind).OfType<string>();
        Nearest = [.. kinds.Concat(Conditions.Any(LooksAtJob) ? ["job"] : Array.Empty<string>())
            .Where(kind => kind != rule.Part.Name)
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)];
        Relations = [.. Conditions.Select(RelationOf).OfType<Relation>().Distinct()];
        Readings = [.. paths.Select(path => path.Reading.Name).Distinct(StringComparer.Ordinal)];
        ReadsHeights = paths.Exists(path => path.Reading.Is == Form.Height);
        HoldsToLimit =
            rule.Body is RuleBody.Require { Holds: { } holds }
            && holds.Parts().Any(condition => condition is Condition.Compare { To: Operand.Limit });
        Conclusions =
            [.. paths.Where(path => path.Reading.Is == Form.Conclusion).Select(path => path.Reading.Name)
            .Distinct(StringComparer.Ordinal)];
    }

    public Rule Rule { get; }

    /// <summary>The rule's own requirement speaks of the limit of the version in force.</summary>
    public bool HoldsToLimit { get; }

    /// <summary>All conditions of the rule, those of its versions too.</summary>
    public IReadOnlyList<Condition> Conditions { get; }

    /// <summary>Kinds of which the rule reads the nearest part.</summary>
    public List<string> Nearest { get; }

    public IReadOnlyList<Relation> Relations { get; }

    /// <summary>Names of the readings that its conditions test.</summary>
    public IReadOnlyList<string> Readings { get; }

    /// <summary>Then it looks at the levels of the job too.</summary>
    public bool ReadsHeights { get; }

    /// <summary>Names of conclusions it reads.</summary>
    public IReadOnlyList<string> Conclusions { get; }

    private static IEnumerable<Model.Path> PathsOf(Condition condition) => condition switch
    {
        Condition.Is test => [test.Path],
        Condition.Compare { To: Operand.Of other } test => [test.Path, other.Path],
        Condition.Compare test => [test.Path],
        _ => [],
    };

    private static Relation? RelationOf(Condition condition) => condition switch
    {
        Condition.Some some => some.Of,
        Condition.Each each => each.Of,
        _ => null,
    };

    /// <summary>Codes, the method and the stack of levels stand with the job.</summary>
    private static bool LooksAtJob(Condition condition) =>
        condition is Condition.CodeIs or Condition.MethodIs || (condition is Condition.Compare { Path.Reading.Is: Form.Height });
}
