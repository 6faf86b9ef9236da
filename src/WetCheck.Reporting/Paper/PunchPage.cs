using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The list to keep or to give: a page for paper and phone, the same as Markdown, and a message to paste.</summary>
public static class PunchPage
{
    /// <summary>One HTML page that stands alone: no script, nothing loaded.</summary>
    /// <exception cref="TemplateException">The book's template can't be filled.</exception>
    public static string Html(Walk walk, string language, string when)
    {
        var list = Listing.Of(walk, language, when);
        var model = new PageModel(list, text => WholeFigures.Of(Escape.Html(text)), text => WholeFigures.Of(RichText.Html(text))).Build();
        model.IsReadOnly = false;
        model.SetValue("title", Escape.Html($"{list.Heading.Job}: {list.Phrases["page.title"]}"), readOnly: true);
        model.SetValue("css_closing", Escape.Css(list.Closing), readOnly: true);
        model.SetValue("css_page", Escape.Css(list.Phrases["page.page"]), readOnly: true);
        model.SetValue("css_of", Escape.Css(list.Phrases["page.of"]), readOnly: true);
        model.SetValue("css_head", Escape.Css($"{list.Heading.Job}. {list.Heading.Book}"), readOnly: true);
        model.IsReadOnly = true;
        return Sheet.Fill(walk.Book, "punch.html", model);
    }

    /// <summary>The same as Markdown, for documents.</summary>
    /// <exception cref="TemplateException">The book's template can't be filled.</exception>
    public static string Markdown(Walk walk, string language, string when) => Sheet.Fill(
        walk.Book,
        "punch.md",
        new PageModel(Listing.Of(walk, language, when), Escape.Markdown, Escape.MarkdownTags).Build());

    /// <summary>Plain text to paste into a message: the verdict first, a line for each entry.</summary>
    /// <exception cref="TemplateException">The book's template can't be filled.</exception>
    public static string Message(Walk walk, string language, string when) =>
        Sheet.Fill(walk.Book, "punch.txt", Reporting.Message.Model(Listing.Of(walk, language, when)));
}
