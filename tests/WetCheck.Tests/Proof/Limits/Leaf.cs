using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>A condition without others in it, and the kind of part it is asked of.</summary>
/// <param name="Decides">It chooses a version; else it is what the rule looks at or requires.</param>
internal sealed record Leaf(Condition Condition, PartKind Of, bool Decides = false);

/// <summary>The leaves of conditions. What runs over related parts is asked of those parts.</summary>
internal static class Leaves
{
    public static IEnumerable<Leaf> Of(Rule rule, Vocabulary vocabulary) =>
        Of(rule, rule.Versions.Select(version => version.When), vocabulary).Select(leaf => leaf with { Decides = true })
            .Concat(Of(rule,
                [rule.When, (rule.Body as RuleBody.Require)?.Holds,
                .. rule.Versions.Select(version => version.Require)], vocabulary));

    private static IEnumerable<Leaf> Of(Rule rule, IEnumerable<Condition?> conditions, Vocabulary vocabulary) =>
        conditions.OfType<Condition>().SelectMany(condition => Of(condition, rule.Part, vocabulary));

    public static IEnumerable<Leaf> Of(Condition condition, PartKind kind, Vocabulary vocabulary) => condition switch
    {
        Condition.All all => all.Of.SelectMany(one => Of(one, kind, vocabulary)),
        Condition.AnyOf any => any.Of.SelectMany(one => Of(one, kind, vocabulary)),
        Condition.Some some => Of(some.Meets, Related(some.Of, kind, vocabulary), vocabulary),
        Condition.Each each => Of(each.Meets, Related(each.Of, kind, vocabulary), vocabulary),
        _ => [new Leaf(condition, kind)],
    };

    public static PartKind Related(Relation relation, PartKind kind, Vocabulary vocabulary) =>
        relation.Kind is { } named ? vocabulary.Kind(named)! : kind;
}
