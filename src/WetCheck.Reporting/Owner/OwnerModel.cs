using Scriban.Runtime;

namespace WetCheck.Reporting;

/// <summary>What a template sees of the owner's page: text that is already fit for it.</summary>
/// <param name="escape">Makes any text harmless there.</param>
/// <param name="plan">A drawing that needs no escape; empty: none.</param>
internal sealed class OwnerModel(OwnerPage page, Func<string, string> escape, string plan = "")
{
    private static readonly string[] OwnerWords = ["keep", "say-this", "say-stop", "say", "nobody", "later", "ask-to-see", "person", "who"];

    public ScriptObject Build()
    {
        var (list, head) = (page.List, page.List.Heading);
        return PageModel.Object(
            ("plan", plan),
            ("job", escape(head.Job)),
            ("made", escape(head.When)),
            ("unread_page", page.IsUnread),
            ("verdict", escape(page.Verdict)),
            ("summary", escape(page.Summary)),
            ("say_this", escape(page.SayThis)),
            ("how", Texts(page.How)),
            ("stops_go_on", escape(page.StopsGoOn)),
            ("groups", PageModel.Array(page.Groups.Select(Group))),
            ("hold", Lines(page.Hold)),
            ("stop_if", Texts(page.StopIf)),
            ("say", Texts(page.Say)),
            ("nobody", PageModel.Array(page.Nobody.Select(Line))),
            ("nobody_more", escape(page.NobodyMore)),
            ("see", PageModel.Array(page.See.Select(Section))),
            ("blocks", PageModel.Array(Blocks())),
            ("codes", Texts(head.Codes.Select(Sentence.Capital))),
            ("warnings", Texts(head.Warnings)),
            ("unread", Texts(list.Unread)),
            ("book", escape(head.Book)),
            ("closing", escape(list.Closing)),
            ("words", PageModel.Object(
                OwnerWords.Select(word => (word.Replace('-', '_'), (object)escape(list.Phrases["owner." + word])))
                    .Append(("to_hold", escape(list.Phrases[Phrase.Group.ToHold]))))));
    }

    /// <summary>Lines under a heading, at the end of the page.</summary>
    private IEnumerable<ScriptObject> Blocks() => new[]
    {
        (Phrase.Group.Hidden, page.Hidden), (Phrase.Group.TakeCare, page.Care), (Phrase.Group.Notes, page.Notes),
    }
        .Where(block => block.Item2.Count > 0)
        .Select(block => PageModel.Object(("title", escape(page.List.Phrases[block.Item1])), ("lines", Lines(block.Item2))));

    private ScriptObject Group(OwnerGroup group) => PageModel.Object(
        ("key", group.Key),
        ("title", escape(group.Title)),
        ("entries", PageModel.Array(group.Entries.Select(Entry))));

    private ScriptObject Entry(OwnerEntry entry) => PageModel.Object(
        ("number", escape(entry.Number)),
        ("mark", entry.Mark switch { Mark.Stop => "stop", Mark.ReadAgain => "again", _ => "correction" }),
        ("word", escape(page.List.Phrases[entry.Mark switch
        {
            Mark.Stop => Phrase.Severity.Stop,
            Mark.ReadAgain => Phrase.Result.ReadAgain,
            _ => Phrase.Result.Correction
        }])),
        ("tag", escape(entry.Tag)),
        ("seen", escape(entry.Seen)),
        ("ask", escape(entry.Ask)),
        ("good", escape(entry.Good)),
        ("before", escape(entry.Before)));

    private ScriptObject Section(OwnerSection section) => PageModel.Object(
        ("title", escape(section.Title)),
        ("lines", PageModel.Array(section.Lines.Select(Line))),
        ("more", escape(section.More)));

    private ScriptObject Line(OwnerLine line) => PageModel.Object(
        ("number", escape(line.Number)), ("see", escape(line.See)), ("good", escape(line.Good)));

    private ScriptArray Lines(IReadOnlyList<Line> lines) => PageModel.Array(lines.Select(line => PageModel.Object(
        ("number", escape(line.Number)), ("text", escape(line.Text)))));

    private ScriptArray Texts(IEnumerable<string> texts) => PageModel.Array(texts.Select(object (text) => escape(text)));
}
