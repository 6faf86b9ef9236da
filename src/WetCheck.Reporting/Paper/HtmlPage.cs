using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The page around one sheet or several: style, marks, and what is printed at the foot of each page.</summary>
internal static class HtmlPage
{
    /// <param name="plan">Null: none.</param>
    public static PageModel Model(Listing list, string? plan) =>
        new(list, Text, text => WholeFigures.Of(RichText.Html(text)), plan ?? "");

    public static string Text(string text) => WholeFigures.Of(Escape.Html(text));

    /// <param name="lists">One for each language; the first gives the page its title and its feet.</param>
    /// <param name="title">The key of what the page is called.</param>
    public static string Of(RuleBook book, IReadOnlyList<Listing> lists, IEnumerable<FilledSheet> sheets, string title = Phrase.Page.Title)
    {
        var list = lists[0];
        return Sheet.Fill(book, "page.html", PageModel.Object(
            ("language", Escape.Html(list.Phrases.Language)),
            ("title", Escape.Html($"{list.Heading.Job}: {list.Phrases[title]}")),
            ("css_drawing", SvgText.Style),
            ("css_closing", Escape.Css(list.Closing)),
            ("css_page", Escape.Css(list.Phrases[Phrase.Page.Itself])),
            ("css_of", Escape.Css(list.Phrases[Phrase.Page.Of])),
            ("css_head", Escape.Css($"{list.Heading.Job}. {list.Heading.Book}")),
            ("sheets", PageModel.Array(sheets.Select(sheet =>
                PageModel.Object(("language", Escape.Html(sheet.Language)), ("html", sheet.Html)))))));
    }
}

/// <summary>One sheet of a page, in one language.</summary>
internal sealed record FilledSheet(string Language, string Html);
