using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The versions of a rule, told without a job.</summary>
internal static class Versions
{
    /// <summary>Those that are not in force here.</summary>
    public static IEnumerable<string> Elsewhere(Rule rule, Side? side, RuleBook book, Phrases phrases) => rule.Versions
        .Where(version => version.When is not null && side?.Versions.Contains(version) != true)
        .Select(version => Of(rule, version, book, phrases));

    /// <summary>"Top 3" or more above the finished curb (IRC 2006 and older or UPC), second-hand."</summary>
    public static string Of(Rule rule, RuleVersion version, RuleBook book, Phrases phrases)
    {
        var asks = version.Require is { } own ? Conditions.Say(own, version.Limit, book, phrases)
            : version.Limit is { } limit && rule.Body is RuleBody.Require { Holds: { } holds } ? Conditions.Say(holds, limit, book, phrases)
            : "";
        var doubts = version.Rows.SelectMany(row => book.Sources.GetValueOrDefault(row, []))
            .Select(source => Cited.Doubt(source.Status, phrases))
            .Distinct()
            .ToList();
        var doubt = doubts is [{ Length: > 0 } only] ? ", " + only : "";
        return Sentence.Closed(Sentence.Capital(version.When is { } when
            ? phrases.Say(Phrase.Why.Version, ("limit", asks), ("when", Conditions.Say(when, null, book, phrases))) + doubt
            : asks + doubt));
    }
}
