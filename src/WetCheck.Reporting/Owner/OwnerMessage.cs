using System.Globalization;
using Scriban.Runtime;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The owner's page as a message: the verdict in 160 characters, an entry in 100, what is left out counted.</summary>
internal static class OwnerMessage
{
    private const int LinesAtMost = 20;

    public static ScriptObject Model(Walk walk, Listing list)
    {
        var telling = new Telling(walk, list.Phrases);
        var page = OwnerPage.Of(walk, list);
        var items = list.Groups.SelectMany(group => group.Items).ToList();
        IReadOnlyList<string> lines = items.Count > 0
            ? [.. items.Select(item => Line(item, telling))]
            : [.. walk.Looks.Take(Listing.LooksShown).Select(look => Cut(SeeLine(look, telling), Message.Entry)).Distinct()];
        var left = items.Count > 0 ? items.Count - LinesAtMost : walk.Looks.Count - Listing.LooksShown;
        return PageModel.Object(
        [
            ("verdict", VerdictLine(telling, page.IsUnread)),
            ("items", PageModel.Array(lines.Take(LinesAtMost))),
            ("more", left > 0 ? Sentence.Closed(list.Phrases.Count(Phrase.Say.More, left)) : ""),
            ("open", PageModel.Array(Message.Open(list, withLooks: items.Count > 0))),
            ("counts", Opening.Counts(telling)),
            ("say", items.Count > 0 ? list.Phrases[Phrase.Owner.MessageSay] : ""),
            ("person", list.Phrases[Phrase.Owner.Person]),
            .. Message.End(list),
        ]);
    }

    private static string VerdictLine(Telling telling, bool isUnread)
    {
        var said = telling.Phrases.Say(Phrase.Message.Verdict, ("job", ""), ("verdict", Opening.Verdict(telling, isUnread)));
        return Cut(telling.Job.Name, Math.Max(0, Message.Verdict - said.Length)) + said;
    }

    /// <summary>As much of what was found as there is room for; the question if it fits too.</summary>
    private static string Line(Item item, Telling telling)
    {
        var phrases = telling.Phrases;
        var mark = item.Mark == Mark.Stop ? " " + phrases[Phrase.Severity.Stop].ToUpperInvariant()
            : item.Mark == Mark.ReadAgain ? " " + phrases[Phrase.Result.ReadAgain].ToUpper(CultureInfo.InvariantCulture)
            : item.OnPaper ? " " + phrases[Phrase.Result.OnPaper] : "";
        var text = item.Mark == Mark.ReadAgain ? OwnerEntry.Again(item, telling) : OwnerText.For(item.Entry, telling);
        var title = $"{item.Number}{mark} {item.Place}: {item.What}.";
        var lead = item.Mark == Mark.ReadAgain ? "" : OwnerText.Lead(item, telling);
        var numbered = Sentence.Joined(item.Number + mark, lead.Length == 0 ? "" : lead + ":");
        var lines = new[]
        {
            Sentence.Joined(numbered, text.Seen, phrases.Say(Phrase.Owner.Ask, ("ask", text.Ask))),
            Sentence.Joined(numbered, text.Seen),
            Sentence.Joined(numbered, Sentence.First(text.Seen)),
            title,
        };
        return lines.FirstOrDefault(line => line.Length <= Message.Entry) ?? Cut(title, Message.Entry);
    }

    private static string SeeLine(Look look, Telling telling)
    {
        var line = Reporting.SeeLine.Of(look, telling);
        return telling.Phrases.Say(Phrase.Owner.MessageSee, ("number", line.Number), ("see", line.See));
    }

    private static string Cut(string text, int most) => text.Length <= most ? text : text[..Math.Max(0, most - 3)] + "...";
}
