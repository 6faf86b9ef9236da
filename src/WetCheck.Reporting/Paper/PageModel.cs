using Scriban.Runtime;

namespace WetCheck.Reporting;

/// <summary>What a template sees of a list: text that is already fit for the page, never a live object.</summary>
/// <param name="escape">Makes any text harmless on this page.</param>
/// <param name="rich">Does the same for a rule's own text, which may hold Markdown.</param>
/// <param name="plan">A drawing that needs no escape; empty: none.</param>
internal sealed class PageModel(Listing list, Func<string, string> escape, Func<string, string> rich, string plan = "")
{
    /// <summary>So many find room below the heading of a Letter sheet, whatever they say.</summary>
    private const int StopsOnOneSheet = 4;

    public ScriptObject Build()
    {
        var (head, phrases) = (list.Heading, list.Phrases);
        var looks = list.Looks.Take(Listing.LooksShown).ToList();
        return Object(
            ("language", escape(phrases.Language)),
            ("job", escape(head.Job)),
            ("method", escape(head.Method)),
            ("stage", escape(head.Stage)),
            ("codes", Texts(head.Codes.Select(Sentence.Capital))),
            ("warnings", Texts(head.Warnings)),
            ("book", escape(head.Book)),
            ("made", escape(head.When)),
            ("ready", escape(list.Ready)),
            ("verdict", Texts(list.Verdict)),
            ("unread", Texts(list.Unread)),
            ("counts", escape(list.Counts)),
            ("closing", escape(list.Closing)),
            ("groups", Array(list.Groups.Select(Group))),
            ("looks", Array(looks.Select(Look))),
            ("more_looks", list.Looks.Count > looks.Count ? escape(phrases.Count(Phrase.Say.More, list.Looks.Count - looks.Count)) : ""),
            ("hidden", Lines(list.Hidden)),
            ("blocks", Array(Blocks())),
            ("plan", plan),
            ("words", Words()));
    }

    public static ScriptObject Object(params IEnumerable<(string Name, object Value)> members)
    {
        var made = new ScriptObject();
        foreach (var (name, value) in members)
        {
            made.SetValue(name, value, readOnly: true);
        }

        made.IsReadOnly = true;
        return made;
    }

    public static ScriptArray Array(IEnumerable<object> items) => new(items) { IsReadOnly = true };

    private ScriptObject Group(Group group) => Object(
        ("key", group.Key),
        ("title", escape(group.Title)),
        ("goes_on", escape(GoesOn(group, list.Phrases))),
        ("items", Array(group.Items.Select(Item))));

    /// <summary>A printed sheet that may not hold every Stop says so: who has only that one must not take it for all.</summary>
    internal static string GoesOn(Group group, Phrases phrases) =>
        group.Key == "stop" && group.Items.Count > StopsOnOneSheet ? phrases.Count(Phrase.Page.StopsGoOn, group.Items.Count) : "";

    private ScriptObject Item(Item item) => Object(
        ("number", escape(item.Number)),
        ("mark", MarkKey(item.Mark)),
        ("word", escape(Word(item))),
        ("title", escape(EntryText.Title(item with { OnPaper = false }, list.Phrases))),
        ("found_label", escape(list.Phrases[item.Planned ? Phrase.Page.Planned : Phrase.Page.Found])),
        ("found", escape(item.Counted.Length == 0 ? item.Found
            : list.Phrases.Say(Phrase.Say.Counts, ("found", item.Found), ("counted", item.Counted)))),
        ("should", escape(item.Should)),
        ("short_label", escape(list.Phrases[item.IsOver ? Phrase.Page.Over : Phrase.Page.Short])),
        ("short", escape(item.Short)),
        ("measured", escape(EntryText.Measured(item, list.Phrases))),
        ("fix", rich(item.Do)),
        ("why", rich(item.Why)),
        ("end", escape(EntryText.End(item, list.Phrases))),
        ("line", escape(item.Line)));

    private ScriptObject Look(LookItem look) => Object(
        ("number", escape(look.Number)),
        ("title", escape(look.Title)),
        ("text", escape(Sentence.Joined(look.Detail, look.Ask, look.How))));

    /// <summary>Lines under a heading; on paper a caution stands with its two sentences.</summary>
    private IEnumerable<ScriptObject> Blocks() => new[]
        {
            (Phrase.Group.ToHold, list.Hold, false), (Phrase.Group.TakeCare, list.Cautions, true), (Phrase.Group.Notes, list.Notes, false),
        }
        .Where(block => block.Item2.Count > 0)
        .Select(block => Object(("title", escape(list.Phrases[block.Item1])), ("lines", Lines(block.Item2)), ("whole", block.Item3)));

    private ScriptArray Lines(IReadOnlyList<Line> lines) => Array(lines.Select(line => Object(
        ("number", escape(line.Number)),
        ("text", escape(line.Text)),
        ("more", escape(line.More)))));

    private ScriptArray Texts(IEnumerable<string> texts) => Array(texts.Select(object (text) => escape(text)));

    /// <summary>"STOP", "CORRECTION, ON PAPER".</summary>
    private string Word(Item item)
    {
        var word = item.Mark == Mark.Stop ? list.Phrases[Phrase.Severity.Stop] : list.Phrases["result." + Keys.Of(item.Entry.Result)];
        return (item.OnPaper ? $"{word}, {list.Phrases[Phrase.Result.OnPaper]}" : word).ToUpperInvariant();
    }

    private ScriptObject Words() => Object(
        PageWords.Select(key => (key, (object)escape(list.Phrases["page." + key.Replace('_', '-')])))
            .Concat(GroupWords.Select(key => (key, (object)escape(list.Phrases["group." + key.Replace('_', '-')])))));

    private static readonly string[] PageWords =
        ["title", "should", "fix", "why", "fixed", "again", "by", "page", "of", "seen_by", "date", "to_check"];

    private static readonly string[] GroupWords = ["look_next", "hidden"];

    /// <summary>The mark's symbol on a page.</summary>
    public static string MarkKey(Mark mark) => mark switch
    {
        Mark.Stop => "stop",
        Mark.Correction => "correction",
        Mark.ReadAgain => "again",
        Mark.HiddenNow => "hidden",
        _ => "check",
    };
}
