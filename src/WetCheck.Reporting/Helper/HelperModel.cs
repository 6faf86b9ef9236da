using Scriban.Runtime;

namespace WetCheck.Reporting;

/// <summary>What a template sees of the helper's list: rows, and in each row one cell for each language.</summary>
/// <param name="sheets">One for each language, the same rows in the same order.</param>
/// <param name="escape">Makes any text harmless on this page.</param>
/// <param name="plan">A drawing that needs no escape; empty: none.</param>
internal sealed class HelperModel(IReadOnlyList<HelperSheet> sheets, Func<string, string> escape, string plan = "")
{
    public ScriptObject Build()
    {
        var first = sheets[0];
        return PageModel.Object(
            ("plan", plan),
            ("job", escape(first.List.Heading.Job)),
            ("made", escape(first.List.Heading.When)),
            ("titles", Cells(sheet =>
                [sheet.List.Phrases[Phrase.Helper.Title], Sentence.Capital(sheet.List.Heading.Method),
                Sentence.Capital(sheet.List.Heading.Stage)])),
            ("stops", Cells(sheet => [sheet.Stop])),
            ("tops", Rows(sheet => sheet.Top)),
            ("sections", PageModel.Array(first.Sections.Select((section, i) => Section(section, i)))),
            ("show_me", Rows(sheet => sheet.ShowMe)),
            ("foot", Rows(sheet => sheet.Foot)));
    }

    private ScriptObject Section(HelperSection section, int at) => PageModel.Object(
        ("key", section.Key),
        ("titles", Cells(sheet => [sheet.Sections[at].Title])),
        ("rows", PageModel.Array(section.Rows.Select((row, i) => Row(row, at, i)))),
        ("more", section.More.Length == 0 ? "" : Cells(sheet => [sheet.Sections[at].More])));

    private ScriptObject Row(HelperRow row, int section, int at) => PageModel.Object(
        ("number", escape(row.Number)),
        ("mark", PageModel.MarkKey(row.Mark)),
        ("is_marked", row.Mark != Mark.None),
        ("cells", PageModel.Array(sheets.Select(sheet =>
        {
            var own = sheet.Sections[section].Rows[at];
            return Cell(sheet, own.Word, own.Title, own.Lines);
        }))));

    private ScriptArray Rows(Func<HelperSheet, IReadOnlyList<string>> lines) =>
        PageModel.Array(lines(sheets[0]).Select((_, i) => Cells(sheet => lines(sheet).Skip(i).Take(1))));

    private ScriptArray Cells(Func<HelperSheet, IEnumerable<string>> lines) =>
        PageModel.Array(sheets.Select(sheet => Cell(sheet, "", "", lines(sheet))));

    private ScriptObject Cell(HelperSheet sheet, string word, string title, IEnumerable<string> lines) => PageModel.Object(
        ("language", escape(sheet.List.Phrases.Language)),
        ("word", escape(word)),
        ("title", escape(title)),
        ("lines", PageModel.Array(lines.Select(object (line) => escape(line)))));
}
