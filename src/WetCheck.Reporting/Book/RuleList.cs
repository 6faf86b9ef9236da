using System.Globalization;
using System.Text;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The rules of a book on a screen, a line each: number, name, how sure its sources are.</summary>
public static class RuleList
{
    private const int NameColumn = 28;

    public static string Of(RuleBook book)
    {
        var phrases = new Phrases(book, "en");
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"Rule book: {book.Name}, {book.Date}. {book.Rules.Count} rules.\n");
        foreach (var chapter in book.Rules.OrderBy(rule => rule.Number).GroupBy(rule => rule.Chapter))
        {
            text.Append('\n').Append(chapter.Key.ToUpperInvariant()).Append('\n');
            foreach (var rule in chapter)
            {
                text.Append(CultureInfo.InvariantCulture, $" {rule.Number}  {rule.Id.PadRight(NameColumn)} {Status(rule, book, phrases)}\n");
            }
        }

        return text.Append("\nMore of one:  wetcheck why 214\n").ToString();
    }

    private static string Status(Rule rule, RuleBook book, Phrases phrases)
    {
        var said = RuleSources.Of(rule, book).Select(entry => entry.Status).Distinct().Order()
            .Select(status => status == SourceStatus.Seen ? "seen" : Cited.Doubt(status, phrases)).ToList();
        return said.Count == 0 ? phrases["doubt.practice"] : string.Join(", ", said);
    }
}
