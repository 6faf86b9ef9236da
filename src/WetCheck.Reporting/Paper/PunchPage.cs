using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The list to keep or to give: a page for paper and phone, the same as Markdown, and a message to paste.</summary>
public static class PunchPage
{
    /// <summary>One HTML page that stands alone: no script, nothing loaded.</summary>
    /// <param name="language"><c>en</c>, <c>es</c>, or <see cref="Languages.Both"/>.</param>
    /// <exception cref="TemplateException">The book's template can't be filled.</exception>
    public static string Html(Walk walk, string language, string when, Reader reader = Reader.Setter) => reader switch
    {
        Reader.Owner => OwnerSheet.Html(walk, ListsOf(walk, language, when)),
        Reader.Helper => HelperPage.Html(walk, language, when),
        _ => SetterHtml(walk, language, when),
    };

    /// <summary>The same as Markdown, for documents.</summary>
    /// <exception cref="TemplateException">The book's template can't be filled.</exception>
    public static string Markdown(Walk walk, string language, string when, Reader reader = Reader.Setter) => reader switch
    {
        Reader.Owner => Each(walk, language, when, list => OwnerSheet.Markdown(walk, list)),
        Reader.Helper => HelperPage.Markdown(walk, language, when),
        _ => Each(walk, language, when, list => PunchMarkdown(walk.Book, list)),
    };

    /// <summary>Plain text to paste into a message: the verdict first, a line for each entry.</summary>
    /// <exception cref="TemplateException">The book's template can't be filled.</exception>
    public static string Message(Walk walk, string language, string when, Reader reader = Reader.Setter) => reader switch
    {
        Reader.Owner => Each(walk, language, when, list => OwnerSheet.Message(walk, list)),
        Reader.Helper => HelperPage.Text(walk, language, when),
        _ => Each(walk, language, when, list => Sheet.Fill(walk.Book, "punch.txt", Reporting.Message.Model(list))),
    };

    internal static IReadOnlyList<Listing> ListsOf(Walk walk, string language, string when) =>
        [.. Languages.Of(language).Select(one => Listing.Of(walk, one, when))];

    /// <summary>The setter's sheet, which is also the page an owner gives.</summary>
    internal static FilledSheet Punch(Walk walk, Listing list) =>
        new(list.Phrases.Language,
            Sheet.Fill(walk.Book, "punch.html",
            HtmlPage.Model(list, FindingPlan.Of(walk, list.Phrases, $"plan-{list.Phrases.Language}")).Build()));

    /// <summary>The same as Markdown.</summary>
    internal static string PunchMarkdown(RuleBook book, Listing list) =>
        Sheet.Fill(book, "punch.md", new PageModel(list, Escape.Markdown, Escape.MarkdownTags).Build());

    private static string SetterHtml(Walk walk, string language, string when)
    {
        var lists = ListsOf(walk, language, when);
        return HtmlPage.Of(walk.Book, lists, lists.Select(list => Punch(walk, list)));
    }

    /// <summary>A sheet in each language, one below the other.</summary>
    private static string Each(Walk walk, string language, string when, Func<Listing, string> sheet) =>
        string.Join('\n', ListsOf(walk, language, when).Select(sheet));
}
