namespace WetCheck.Reporting;

/// <summary>A list on a screen: the verdict stands last, where the eye is.</summary>
public static class ScreenText
{
    /// <param name="all">Also what is OK, later and not on this job, and every look.</param>
    /// <returns>Lines of at most 78, each ended by a line feed.</returns>
    public static string Of(Listing list, bool all = false)
    {
        var lines = new List<string>(Head(list.Heading));
        foreach (var group in list.Groups)
        {
            lines.Add("");
            lines.Add(group.Title);
            lines.AddRange(group.Items.SelectMany(item => EntryText.Of(item, list.Phrases)));
        }

        lines.Add("");
        lines.AddRange(LookText.Of(list, all));
        lines.AddRange(Block(Phrase.Group.Hidden, list.Hidden, list));
        lines.AddRange(Block(Phrase.Group.ToHold, list.Hold, list));
        lines.AddRange(Block(Phrase.Group.TakeCare, list.Cautions, list));
        lines.AddRange(Block(Phrase.Group.Notes, list.Notes, list));
        if (all)
        {
            lines.AddRange(list.Rest.SelectMany(group => Rest(group)));
        }

        if (lines[^1].Length > 0)
        {
            lines.Add("");
        }

        lines.AddRange(End(list));
        return string.Join('\n', lines) + "\n";
    }

    /// <summary>Job, method, stop; codes taken; rule book and when.</summary>
    internal static IEnumerable<string> Head(Heading head) =>
    [
        .. Column.Wrap($"{head.Job} - {head.Method} - {head.Stage}"),
        .. head.Codes.Count == 0 ? [] : Column.Wrap(Sentence.Capital(string.Join("; ", head.Codes))),
        .. head.Warnings.SelectMany(warning => Column.Wrap(warning)),
        .. Column.Wrap(head.When.Length == 0 ? head.Book : $"{head.Book} - {head.When}"),
    ];

    private static IEnumerable<string> Block(string heading, IReadOnlyList<Line> block, Listing list) => block.Count == 0
        ? []
        : block.SelectMany(line => Column.Wrap(line.Text, Column.Numbered(line.Number))).Prepend(list.Phrases[heading]);

    private static IEnumerable<string> Rest(Group group) => group.Items
        .SelectMany(item =>
            Column.Wrap(item.Found.Length == 0 ? item.Subject : $"{item.Subject}: {item.Found}",
            Column.Numbered(item.Number)))
        .Prepend(group.Title);

    internal static IEnumerable<string> End(Listing list) =>
    [
        .. Column.Wrap(list.Counts),
        .. list.Verdict.Concat(list.Unread).SelectMany(line => Column.Wrap(line)),
        .. Column.Wrap(list.Closing),
        .. Next(Phrase.Close.Look, $"wetcheck look {list.Command}", list.Phrases),
        .. Next(Phrase.Close.Print, $"wetcheck punch {list.Command} -o {list.Page}", list.Phrases),
    ];

    /// <summary>A command is never broken: where there is no room beside its label it stands below.</summary>
    private static IEnumerable<string> Next(string key, string command, Phrases phrases) =>
        phrases.Say(key, ("command", command)) is { Length: <= Column.Width } line
        ? [line]
        : [phrases.Say(key, ("command", "")).TrimEnd(), command];
}
