using Scriban.Runtime;

namespace WetCheck.Reporting;

/// <summary>The helper's list as text to paste: the first line in 160 characters, the others in 100, what is left out counted.</summary>
internal static class HelperMessage
{
    public static ScriptObject Model(IReadOnlyList<HelperSheet> sheets) => PageModel.Object(
        ("verdicts", Texts(sheets.Select(sheet => Message.Beginning(sheet.List.Heading.Job, $": {sheet.Stop}")))),
        ("heads", Texts(sheets.SelectMany(sheet => sheet.Top.SelectMany(Packed)))),
        ("sections", PageModel.Array(Shown(sheets).Select(at => Section(sheets, at.Section, at.Rows, at.Left)))),
        ("foot", Texts(sheets.SelectMany(sheet => sheet.ShowMe.SelectMany(Packed).Concat(sheet.Foot)))),
        ("made", sheets[0].List.Heading.When));

    /// <summary>
    /// How many rows of each section are shown, and how many are left out after it. Of things to fix and to read again
    /// there are as many as in any message.
    /// </summary>
    private static IEnumerable<(int Section, int Rows, int Left)> Shown(IReadOnlyList<HelperSheet> sheets)
    {
        var room = Message.EntriesAtMost;
        var left = sheets[0].Sections.Where(section => section.HasItems).Sum(section => section.Rows.Count) - room;
        foreach (var (at, section) in sheets[0].Sections.Index())
        {
            if (!section.HasItems)
            {
                yield return (at, section.Rows.Count, 0);
            }
            else if (room > 0)
            {
                var rows = Math.Min(room, section.Rows.Count);
                room -= rows;
                yield return (at, rows, room == 0 ? left : 0);
            }
        }
    }

    private static ScriptObject Section(IReadOnlyList<HelperSheet> sheets, int at, int shown, int left) => PageModel.Object(
        ("title", string.Join(" / ", sheets.Select(sheet => sheet.Sections[at].Title))),
        ("lines", Texts(Enumerable.Range(0, shown).SelectMany(row => sheets.SelectMany(sheet => Lines(sheet.Sections[at].Rows[row]))))),
        ("more", Texts(sheets.Select(sheet => left > 0
            ? Sentence.Closed(sheet.List.Phrases.Count(Phrase.Say.More, left)) : sheet.Sections[at].More)
            .Where(more => more.Length > 0))));

    private static IEnumerable<string> Lines(HelperRow row) =>
        Packed(Sentence.Joined(row.Number, Sentence.Closed(row.Word), row.Title))
            .Concat(row.Lines.SelectMany(Packed)) is var lines && row.Title.Length > 0
            ? lines
            : Packed(Sentence.Joined([row.Number, .. row.Lines]));

    /// <summary>As many whole sentences on a line as fit.</summary>
    private static IEnumerable<string> Packed(string text)
    {
        var line = "";
        foreach (var sentence in ShortSentences.Of(text).SelectMany(one => Column.Wrap(one, width: Message.Entry)))
        {
            if (line.Length > 0 && line.Length + 1 + sentence.Length > Message.Entry)
            {
                yield return line;
                line = "";
            }

            line = Sentence.Joined(line, sentence);
        }

        yield return line.Length <= Message.Entry ? line : line[..(Message.Entry - 3)] + "...";
    }

    private static ScriptArray Texts(IEnumerable<string> texts) => PageModel.Array(texts);
}
