using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Other ways for a short check to be met: another value of the plan, another branch of the rule.</summary>
internal static class WouldAlso
{
    public static IEnumerable<string> Of(Entry entry, Evidence evidence, Telling telling)
    {
        if (entry.Result != Result.Correction && entry.Paper != Paper.Short)
        {
            return [];
        }

        var held = entry.Paper is Paper.Correction or Paper.Short ? entry.Worst.Hold.Select(hold => Lines.Bound(hold, telling)) : [];
        return held.Concat(Branches(entry.Rule, evidence, telling)).Select(way => Sentence.Closed(Sentence.Capital(way)));
    }

    /// <summary>Branches of an any-of beside the one that was tested, as they stand.</summary>
    private static IEnumerable<string> Branches(Rule rule, Evidence evidence, Telling telling)
    {
        var failed = evidence.Test?.Condition;
        var required = evidence.Side?.Versions.Select(version => (Asks: version.Require, version.Limit)) ?? [];
        var own = rule.Body is RuleBody.Require { Holds: { } holds } ? [(Asks: holds, Limit: null)]
            : Array.Empty<(Condition? Asks, Quantity? Limit)>();
        return required.Concat(own)
            .Where(one => one.Asks is not null)
            .SelectMany(one => one.Asks!.Parts().OfType<Condition.AnyOf>().SelectMany(any => any.Of)
                .Select(branch => (Branch: branch, one.Limit)))
            .Where(one => failed is not null && !one.Branch.Parts().Contains(failed))
            .Select(one => Conditions.Say(one.Branch, one.Limit, telling.Walk.Book, telling.Phrases))
            .Distinct();
    }
}
