using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>
/// The helper's list in its three forms. Spanish stands first, for whom it is written; English beside it, for who gives
/// it.
/// </summary>
internal static class HelperPage
{
    public static string Html(Walk walk, string language, string when)
    {
        var sheets = Sheets(walk, language, when);
        var filled =
            Sheet.Fill(walk.Book, "helper.html",
            new HelperModel(sheets, HtmlPage.Text, FindingPlan.Of(walk, sheets[0].List.Phrases, "plan") ?? "").Build());
        return HtmlPage.Of(walk.Book, [.. sheets.Select(sheet => sheet.List)],
            [new FilledSheet(sheets[0].List.Phrases.Language, filled)], Phrase.Helper.Title);
    }

    public static string Markdown(Walk walk, string language, string when) =>
        Sheet.Fill(walk.Book, "helper.md", new HelperModel(Sheets(walk, language, when), Escape.Markdown).Build());

    public static string Text(Walk walk, string language, string when) =>
        Sheet.Fill(walk.Book, "helper.txt", HelperMessage.Model(Sheets(walk, language, when)));

    private static IReadOnlyList<HelperSheet> Sheets(Walk walk, string language, string when) =>
        [.. Languages.Of(language).Reverse().Select(one => HelperSheet.Of(walk, one, when))];
}
