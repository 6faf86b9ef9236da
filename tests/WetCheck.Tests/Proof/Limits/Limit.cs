using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>A number that a rule names for a reading of a kind of part, or another reading that it is held against.</summary>
/// <param name="Decides">It chooses a version. Then numbers count as read, without the tools' bands.</param>
internal sealed record Limit(PartKind Kind, ReadingKind Reading, Comparison By, Quantity? Number, string? Datum,
    Model.Path? Other, bool Decides)
{
    public bool IsFloor => By is Comparison.AtLeast or Comparison.Over;

    public bool IsStrict => By is Comparison.Over or Comparison.Under;

    public static IReadOnlyList<Limit> Of(RuleBook book) => [.. book.Rules.SelectMany(rule => Of(rule, book.Vocabulary)).Distinct()];

    public static IEnumerable<Limit> Of(Rule rule, Vocabulary vocabulary) => Leaves.Of(rule, vocabulary)
        .Where(leaf => leaf.Condition is Condition.Compare)
        .SelectMany(leaf => Of(rule, leaf, vocabulary));

    private static IEnumerable<Limit> Of(Rule rule, Leaf leaf, Vocabulary vocabulary)
    {
        var test = (Condition.Compare)leaf.Condition;
        var kind = test.Path.Kind is { } named ? vocabulary.Kind(named)! : leaf.Of;
        return test.To switch
        {
            Operand.Fixed number => [new Limit(kind, test.Path.Reading, test.By, number.Quantity, number.Datum, null, leaf.Decides)],
            Operand.Limit limit => rule.Versions.Select(version => version.Limit).OfType<Quantity>()
                .Select(number => new Limit(kind, test.Path.Reading, test.By, number, limit.Datum, null, leaf.Decides)),
            Operand.Of other =>
                [new Limit(kind, test.Path.Reading, test.By, null, null,
                other.Path with { Kind = other.Path.Kind ?? leaf.Of.Name }, leaf.Decides)],
            _ => [],
        };
    }
}
