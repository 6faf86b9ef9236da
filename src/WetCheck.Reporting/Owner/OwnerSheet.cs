using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The owner's list: the page to keep, and the setter's list as the page to give.</summary>
internal static class OwnerSheet
{
    /// <summary>The page to give begins on a printed page of its own.</summary>
    public static string Html(Walk walk, IReadOnlyList<Listing> lists) => HtmlPage.Of(walk.Book, lists, lists.SelectMany(list => new[]
    {
        new FilledSheet(list.Phrases.Language,
            Sheet.Fill(walk.Book, "owner.html",
            new OwnerModel(OwnerPage.Of(walk, list), HtmlPage.Text,
            FindingPlan.Of(walk, list.Phrases, $"kept-{list.Phrases.Language}") ?? "").Build())),
        Given(PunchPage.Punch(walk, list), list),
    }));

    public static string Markdown(Walk walk, Listing list) =>
        Sheet.Fill(walk.Book, "owner.md", new OwnerModel(OwnerPage.Of(walk, list), Escape.Markdown).Build())
        + $"\n---\n\n**{Escape.Markdown(list.Phrases[Phrase.Owner.Give])}**\n\n"
        + PunchPage.PunchMarkdown(walk.Book, list);

    /// <summary>A message has only the letters that every phone sends as one.</summary>
    public static string Message(Walk walk, Listing list) =>
        Sheet.Fill(walk.Book, "owner.txt", OwnerMessage.Model(walk, list)).Replace('\u00ab', '"').Replace('\u00bb', '"');

    private static FilledSheet Given(FilledSheet punch, Listing list) =>
        punch with { Html = $"<p class=\"give\">{HtmlPage.Text(list.Phrases[Phrase.Owner.Give])}</p>\n{punch.Html}" };
}
