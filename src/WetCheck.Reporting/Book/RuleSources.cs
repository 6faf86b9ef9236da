using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>All that a rule leans on, whatever code is in force.</summary>
internal static class RuleSources
{
    public static IEnumerable<SourceEntry> Of(Rule rule, RuleBook book) => Of(rule.AllRows, book);

    public static IEnumerable<SourceEntry> Of(IEnumerable<string> rows, RuleBook book) =>
        rows.Distinct().SelectMany(row => book.Sources.GetValueOrDefault(row, []));

    /// <summary>"IRC P2709.2, second-hand, 2009 to 2021"; what was seen says so too.</summary>
    public static string Say(SourceEntry entry, Phrases phrases)
    {
        var said = new Cited(entry, null, null).Whole(phrases);
        return entry.Status == SourceStatus.Seen ? said + ", seen" : said;
    }
}
