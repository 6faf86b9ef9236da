using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>
/// Everything a list says of one walk, in the words of one language, before it takes the form of a screen, a page or a
/// message.
/// </summary>
/// <param name="Groups">Entries to fix by deadline, then those to read again; only groups that have entries.</param>
/// <param name="Looks">All that are owed, most pressing first.</param>
/// <param name="Cover">"before the boards": what hides the first look; may be empty.</param>
/// <param name="Rest">To check one by one, OK, later and not on this job, for those who ask for all.</param>
/// <param name="Ready">The verdict in one sentence.</param>
/// <param name="Verdict">The same with what is to be fixed, in a few lines.</param>
/// <param name="Unread">What of the file could not be read.</param>
/// <param name="Closing">The same in every output.</param>
/// <param name="Command">What the command line takes for this job.</param>
/// <param name="Page">The page that would be made of it.</param>
public sealed record Listing(
    Heading Heading,
    IReadOnlyList<Group> Groups,
    IReadOnlyList<LookItem> Looks,
    string Cover,
    IReadOnlyList<Line> Hidden,
    IReadOnlyList<Line> Hold,
    IReadOnlyList<Line> Cautions,
    IReadOnlyList<Line> Notes,
    IReadOnlyList<Group> Rest,
    Tally Tally,
    string Counts,
    string Ready,
    IReadOnlyList<string> Verdict,
    IReadOnlyList<string> Unread,
    string Closing,
    string Command,
    string Page,
    Phrases Phrases)
{
    /// <summary>Looks that are shown when not all are asked for.</summary>
    public const int LooksShown = 9;

    /// <param name="when">Printed as it comes in: the date and the time.</param>
    public static Listing Of(Walk walk, string language, string when)
    {
        var telling = new Telling(walk, new Phrases(walk.Book, language));
        var tally = Tally.Of(walk);
        return new Listing(
            Heading.Of(telling, when),
            [.. GroupsOf(telling)],
            [.. walk.Looks.Select(look => Reporting.Looks.Of(look, telling))],
            walk.Looks.Count > 0 ? Reporting.Looks.Cover(walk.Looks[0], telling) : "",
            Lines.Hidden(telling),
            Lines.Hold(telling),
            Lines.Said(walk.Cautions, telling),
            Lines.Said(walk.Notes, telling),
            [.. RestOf(telling)],
            tally,
            tally.Line(telling.Phrases),
            VerdictLines.Ready(telling),
            VerdictLines.Of(telling),
            [.. VerdictLines.Unread(telling)],
            telling.Phrases[Phrase.Close.Record],
            Naming.Job(walk.Job),
            Naming.Page(walk.Job),
            telling.Phrases);
    }

    private static IEnumerable<Group> GroupsOf(Telling telling)
    {
        foreach (var severity in Enum.GetValues<Severity>())
        {
            var entries = telling.Walk.ToFix.Where(entry => entry.Severity == severity).ToList();
            if (entries.Count > 0)
            {
                yield return Group.Of(Keys.Of(severity), entries, telling);
            }
        }

        var again = telling.Walk.Entries.Where(entry => entry.Result == Result.ReadAgain).ToList();
        if (again.Count > 0)
        {
            yield return Group.Of(Keys.Of(Result.ReadAgain), again, telling);
        }
    }

    private static IEnumerable<Group> RestOf(Telling telling) => new[] { Result.ToCheck, Result.Ok, Result.Later, Result.NotHere }
        .Select(result => (result, Entries: telling.Walk.Entries.Where(entry => entry.Result == result).ToList()))
        .Where(rest => rest.Entries.Count > 0)
        .Select(rest => Group.Of(Keys.Of(rest.result), rest.Entries, telling));
}

/// <param name="Key">Names its heading in the words: <c>before-cover</c>.</param>
public sealed record Group(string Key, string Title, IReadOnlyList<Item> Items)
{
    internal static Group Of(string key, IEnumerable<Entry> entries, Telling telling) =>
        new(key, telling.Phrases["group." + key], [.. entries.Select(entry => Reporting.Items.Of(entry, telling))]);
}

/// <summary>One line of a list that is no entry.</summary>
/// <param name="More">What paper adds: a caution's two sentences, the why of a note.</param>
public sealed record Line(string Number, string Text, string More = "");
