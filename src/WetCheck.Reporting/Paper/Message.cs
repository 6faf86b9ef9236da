using System.Globalization;
using Scriban.Runtime;

namespace WetCheck.Reporting;

/// <summary>A list that fits a message: the verdict in 160 characters, an entry in 100, what is left out counted.</summary>
internal static class Message
{
    public const int Verdict = 160;
    public const int Entry = 100;
    public const int EntriesAtMost = 20;

    /// <summary>Least sure first: an entry stands under the first that is said of it.</summary>
    private static readonly string[] DoubtWords =
        [Phrase.Doubt.Practice, Phrase.Doubt.FromMemory, Phrase.Doubt.SecondHand, Phrase.Doubt.Computed];

    public static ScriptObject Model(Listing list)
    {
        var items = list.Groups.SelectMany(group => group.Items).ToList();
        var left = items.Count - EntriesAtMost;
        return PageModel.Object(
        [
            ("verdict", VerdictLine(list)),
            ("items", PageModel.Array(items.Take(EntriesAtMost).Select(item => Line(item, list.Phrases)))),
            ("more", left > 0 ? Sentence.Closed(list.Phrases.Count(Phrase.Say.More, left)) : ""),
            ("doubts", PageModel.Array(Doubts(items.Take(EntriesAtMost), list.Phrases))),
            ("open", PageModel.Array(Open(list, withLooks: true))),
            ("counts", list.Counts),
            .. End(list),
        ]);
    }

    /// <summary>What stands below the entries of every message, whoever reads it.</summary>
    public static IEnumerable<(string Name, object Value)> End(Listing list) =>
    [
        ("unread", PageModel.Array(list.Unread)),
        ("cautions", PageModel.Array(list.Cautions.Select(line => $"{line.Number} {line.Text}"))),
        ("codes", PageModel.Array(list.Heading.Codes.Select(Sentence.Capital))),
        ("warnings", PageModel.Array(list.Heading.Warnings)),
        ("book", list.Heading.Book),
        ("made", list.Heading.When),
        ("closing", list.Closing),
    ];

    /// <summary>"Larkspur: NOT READY for the flood test. 2 Stop, 6 more, 2 on paper."</summary>
    private static string VerdictLine(Listing list)
    {
        var tally = list.Tally;
        var stops = list.Groups.Where(group => group.Key == "stop").Sum(group => group.Items.Count);
        var counts = new[]
        {
            (Phrase.Message.Stop, stops),
            (stops > 0 ? Phrase.Message.More : Phrase.Message.ToFix, tally.Corrections - stops),
            (Phrase.Message.OnPaper, tally.OnPaper),
        }
            .Where(count => count.Item2 > 0)
            .Select(count => list.Phrases.Count(count.Item1, count.Item2));
        var verdict = list.Phrases.Say(Phrase.Message.Verdict, ("job", ""), ("verdict", Sentence.Joined(
            list.Ready,
            tally.Corrections == 0 ? "" : string.Join(", ", counts) + ".")));
        return Beginning(list.Heading.Job, verdict);
    }

    /// <summary>The first line: of a long name of a job only its beginning, for the rest is needed.</summary>
    public static string Beginning(string job, string rest)
    {
        var room = Verdict - rest.Length;
        return (job.Length <= room ? job : Cut.Beginning(job, room - 3) + "...") + rest;
    }

    /// <summary>What is to be looked at, and what nobody can see any more, by its numbers.</summary>
    public static IEnumerable<string> Open(Listing list, bool withLooks)
    {
        var looks = list.Looks.Take(withLooks ? Listing.LooksShown : 0).Select(look => look.Number).ToList();
        var left = list.Looks.Count - looks.Count;
        var hidden = list.Hidden.Select(line => line.Number).ToList();
        return new[]
        {
            (Phrase.Message.ToCheck, looks, left > 0 ? " " + list.Phrases.Count(Phrase.Say.More, left) : ""),
            (Phrase.Message.Hidden, hidden, ""),
        }
            .Where(line => line.Item2.Count > 0)
            .SelectMany(line =>
                Column.Wrap(Sentence.Closed(list.Phrases.Say(line.Item1, ("numbers", string.Join(", ", line.Item2)))
                + line.Item3), width: Entry));
    }

    /// <summary>There is no room beside each entry for how sure its value is: it is said once, with the numbers.</summary>
    private static IEnumerable<string> Doubts(IEnumerable<Item> items, Phrases phrases) => items
        .SelectMany(item =>
            DoubtWords.Where(key => item.Says.Contains(phrases[key], StringComparison.OrdinalIgnoreCase)).Take(1)
            .Select(key => (key, item.Number)))
        .GroupBy(one => one.key)
        .Select(group =>
            $"{Sentence.Capital(phrases[group.Key])}: {Sentence.Closed(Numbers.Few([.. group.Select(one => one.Number)], phrases))}");

    /// <summary>Says all it can in one line.</summary>
    private static string Line(Item item, Phrases phrases)
    {
        var mark = item.Mark == Mark.Stop ? " " + phrases[Phrase.Severity.Stop].ToUpperInvariant()
            : item.Mark == Mark.ReadAgain ? " " + phrases[Phrase.Result.ReadAgain].ToUpper(CultureInfo.InvariantCulture)
            : item.OnPaper ? " " + phrases[Phrase.Result.OnPaper] : "";
        var title = $"{item.Number}{mark} {item.Place}: {item.What}.";
        var found = item.Found.Length == 0 ? "" : phrases.Say(item.Planned ? Phrase.Say.Planned : Phrase.Say.Found, ("found", item.Found));
        var should = item.Should.Length == 0 ? "" : phrases.Say(Phrase.Message.Needs, ("limit", item.Brief));

        // Beside what was found the limit needs no level of its own: it stands in the same one.
        var beside = item.Tape.Length == 0 || found.Length == 0 ? should : phrases.Say(Phrase.Message.Needs, ("limit", item.Tape));
        var lines = new[]
        {
            Sentence.Joined(title, found, beside, Sentence.First(item.Do), item.Before),
            Sentence.Joined(title, found, beside, Sentence.First(item.Do)),
            Sentence.Joined(title, found, beside, item.Before),
            Sentence.Joined(title, found, beside),
            Sentence.Joined(title, should),
            Sentence.Joined(title, item.Before),
            title,
        };
        return lines.FirstOrDefault(line => line.Length <= Entry) ?? title[..(Entry - 3)] + "...";
    }
}
