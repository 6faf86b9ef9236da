using System.Globalization;
using System.Text;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Every rule of a book as a page of Markdown: what to look at, when it is OK, why, what to do, who says so.</summary>
public static class RulePage
{
    public static string Of(RuleBook book)
    {
        var phrases = new Phrases(book, "en");
        var page = new StringBuilder();
        page.Append("# Every rule\n\n");
        page.Append("Written by `wetcheck rules --format md`; not by hand.\n\n");
        page.Append(CultureInfo.InvariantCulture, $"Rule book: {book.Name}, {book.Date}. {book.Rules.Count} rules.\n\n");
        page.Append("*Seen* was read in the code's text or on a standards body's page; all else is said as it is:\n");
        page.Append("*second-hand*, *from memory*, *computed*, *trade practice*. Local code and the licensed\ntrades decide.\n");
        foreach (var chapter in book.Rules.OrderBy(rule => rule.Number).GroupBy(rule => rule.Chapter))
        {
            page.Append(CultureInfo.InvariantCulture, $"\n## {Sentence.Capital(chapter.Key)}\n");
            foreach (var rule in chapter)
            {
                page.Append(RuleEntry.Of(rule, book, phrases));
            }
        }

        return page.ToString();
    }
}
