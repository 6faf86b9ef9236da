using System.Globalization;
using System.Text;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The rules of a book on a screen, a line each: number, name, how sure its sources are.</summary>
public static class RuleList
{
    private const int NameColumn = 28;

    /// <summary>With how many rules each chapter has, by their sources, and how many are without cases.</summary>
    public static string Of(RuleBook book, IReadOnlyList<RuleCase> cases)
    {
        var phrases = new Phrases(book, "en");
        var text = new StringBuilder();
        var bare = book.Rules.Select(rule => rule.Id).Except(cases.Select(one => one.Rule)).Count();
        text.Append(CultureInfo.InvariantCulture,
            $"Rule book: {book.Name}, {book.Date}. {book.Rules.Count} rules, {cases.Count} cases, {bare} rules without cases.\n");
        foreach (var chapter in book.Rules.OrderBy(rule => rule.Number).GroupBy(rule => rule.Chapter))
        {
            var counts =
                chapter.GroupBy(rule => Status(rule, book, phrases)).OrderByDescending(same => same.Count())
                .Select(same => $"{same.Count()} {same.Key}");
            text.Append(CultureInfo.InvariantCulture, $"\n{chapter.Key.ToUpperInvariant()}: {chapter.Count()}\n");
            foreach (var line in Column.Wrap(string.Join("; ", counts), "      "))
            {
                text.Append(line).Append('\n');
            }

            foreach (var rule in chapter)
            {
                text.Append(CultureInfo.InvariantCulture,
                    $" {rule.Number}  {rule.Id.PadRight(NameColumn)} {Status(rule, book, phrases)}\n");
            }
        }

        return text.Append("\nMore of one:  wetcheck why 214\n").ToString();
    }

    private static string Status(Rule rule, RuleBook book, Phrases phrases)
    {
        var said = RuleSources.Of(rule, book).Select(entry => entry.Status).Distinct().Order()
            .Select(status => status == SourceStatus.Seen ? "seen" : Cited.Doubt(status, phrases)).ToList();
        return said.Count == 0 ? phrases[Phrase.Doubt.Practice] : string.Join(", ", said);
    }
}
