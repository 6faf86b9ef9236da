using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The figure of a good answer: in the job's own units, without the level it is taken from, which the sentence names.</summary>
internal static class OwnerLimit
{
    /// <summary>Of a check that was decided by this test; by a choice that is no figure: the rule's own.</summary>
    public static string Of(Rule rule, Measured test, Telling telling) =>
        Range(rule, telling) is { } range ? range
        : test.Condition is not Condition.Compare ? Any(OfRule(rule, telling), telling)
        : test.Fact is { Kind.Is: Form.Height or Form.Amount } ? Plain(test, telling)
        : Limit.Plain(test, telling);

    /// <summary>Where nobody has looked yet: every limit that may hold is named.</summary>
    public static string Of(Check check, Telling telling)
    {
        if (Range(check.Rule, telling) is { } range)
        {
            return range;
        }

        var limits = check.Judgement.Sides
            .Select(Evidence.Deciding)
            .OfType<Measured>()
            .Where(test => test.Condition is Condition.Compare && (test.Limit is not null || OnTape.Bound(test) is not null))
            .Select(test => Plain(test, telling))
            .Distinct()
            .ToList();
        return Any(limits.Count > 0 ? limits : OfRule(check.Rule, telling), telling);
    }

    private static string Any(List<string> limits, Telling telling) => limits.Count switch
    {
        0 => telling.Phrases[Phrase.Slot.Limit],
        1 => limits[0],
        _ => telling.Phrases.Say(Phrase.Owner.AskWhich, ("limits", telling.Phrases.List(limits, Phrase.Say.Or))),
    };

    /// <summary>All its limits, where nothing is known that tells which holds.</summary>
    private static List<string> OfRule(Rule rule, Telling telling) =>
        [.. rule.Versions.Select(version => version.Limit).OfType<Quantity>()
            .Concat(Fixed(rule).Select(one => one.Held)).Select(limit => Figure(limit, null, telling)).Distinct()];

    /// <summary>A rule with a least and a most: <c>2" to 9"</c>.</summary>
    private static string? Range(Rule rule, Telling telling)
    {
        var bounds = Fixed(rule).DistinctBy(one => (one.By, one.Held.Value)).OrderBy(one => one.Held.Value).ToList();
        return bounds is [{ By: Comparison.AtLeast or Comparison.Over } least,
        { By: Comparison.AtMost or Comparison.Under } most] && least.Read == most.Read
            ? telling.Phrases.Say(Phrase.Owner.Range, ("from", Figure(least.Held, least.By, telling)),
                ("to", Figure(most.Held, most.By, telling)))
            : null;
    }

    private static IEnumerable<(ReadingKind Read, Comparison By, Quantity Held)> Fixed(Rule rule) =>
        rule.Versions.Select(version => version.Require).Append((rule.Body as RuleBody.Require)?.Holds).OfType<Condition>()
            .SelectMany(holds => holds.Parts().OfType<Condition.Compare>())
            .Where(compare => compare.To is Operand.Fixed)
            .Select(compare => (compare.Path.Reading, compare.By, ((Operand.Fixed)compare.To).Quantity));

    /// <summary>As the rule has it: the level that a height is taken from stands in the sentence.</summary>
    private static string Plain(Measured test, Telling telling) =>
        test is { Limit: { } limit, Condition: Condition.Compare { By: var by } } ? Figure(limit, by, telling) : Limit.Plain(test, telling);

    /// <summary>An inch figure on a tape in millimetres is brought to a mark on its good side.</summary>
    private static string Figure(Quantity limit, Comparison? by, Telling telling) =>
        telling.Job.Metric == true && limit.Measure is Measure.Length or Measure.Slope && !limit.Typed.IsMetric
            ? telling.Show.Of(limit.Value, telling.UnitOf(limit.Measure), by is { } side ? Marks.For(side) : Rounding.Nearest)
            : telling.Show.Of(limit);
}
