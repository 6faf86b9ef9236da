using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>All that a rule leans on, whatever code is in force.</summary>
internal static class RuleSources
{
    public static IEnumerable<SourceEntry> Of(Rule rule, RuleBook book) =>
        Of(rule.Rows.Concat(rule.Versions.SelectMany(version => version.Rows)), book);

    public static IEnumerable<SourceEntry> Of(IEnumerable<string> rows, RuleBook book) =>
        rows.Distinct().SelectMany(row => book.Sources.GetValueOrDefault(row, []));

    /// <summary>"ICC, IRC P2709.2, 2009 to 2021: second-hand".</summary>
    public static string Say(SourceEntry entry, Phrases phrases)
    {
        var named = Sentence.Joined(entry.Document, entry.Section);
        var parts = new[] { entry.Publisher == entry.Document ? "" : entry.Publisher, named, entry.Editions }.Where(part => part.Length > 0);
        return $"{string.Join(", ", parts)}: {(entry.Status == SourceStatus.Seen ? "seen" : Cited.Doubt(entry.Status, phrases))}";
    }
}
