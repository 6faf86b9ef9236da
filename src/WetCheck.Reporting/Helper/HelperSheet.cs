using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The helper's list in one language, in the order it is read: stop, tools, care, today, after that, the rest.</summary>
/// <param name="Stop">The first sentence.</param>
/// <param name="Top">Tools, how to stand, the numbers of the Stops.</param>
/// <param name="Foot">Asked before the start, counts, closing, codes, rule book.</param>
internal sealed record HelperSheet(Listing List, string Stop, IReadOnlyList<string> Top,
    IReadOnlyList<HelperSection> Sections, IReadOnlyList<string> ShowMe, IReadOnlyList<string> Foot)
{
    public static HelperSheet Of(Walk walk, string language, string when)
    {
        var list = Listing.Of(walk, language, when);
        var telling = new Telling(walk, list.Phrases);
        var order = HandsOrder.Of(walk);
        return new HelperSheet(
            list,
            HelperTop.Stop(telling),
            [.. HelperTop.Stops(order, telling), .. HelperTop.Tools(order, telling), list.Phrases[Phrase.Helper.Stand], .. list.Unread],
            [.. SectionsOf(order, list, telling).Where(section => section.Rows.Count > 0 || section.Key == "today")],
            [.. HelperTop.ShowMe(order, telling)],
            [Sentence.Closed(list.Counts), list.Closing,
                .. list.Heading.Codes.Count == 0 ? []
                : new[] { Sentence.Closed(Sentence.Capital(string.Join("; ", list.Heading.Codes))) },
                .. list.Heading.Warnings, Sentence.Closed(list.Heading.Book)]);
    }

    private static IEnumerable<HelperSection> SectionsOf(HandsOrder order, Listing list, Telling telling)
    {
        var phrases = list.Phrases;
        yield return new("care", phrases[Phrase.Group.TakeCare], HelperRows.Said(telling.Walk.Cautions, telling));
        yield return new("today", Counted(Phrase.Helper.Today, order.Today.Count, phrases), Own(order.Today));
        foreach (var (page, entries) in order.After.Chunk(HandsOrder.AtOnce).Index())
        {
            yield return new("after",
                page == 0 ? Counted(Phrase.Helper.After, order.After.Count, phrases)
                : phrases[Phrase.Helper.AfterMore], Own(entries));
        }

        yield return new("not-yours", phrases[Phrase.Helper.NotYours],
            [.. order.NotYours.Select(entry => HelperItem.NotYours(entry, telling))]);
        yield return new("read-again", phrases[Phrase.Group.ReadAgain],
            [.. telling.Walk.Entries.Where(entry => entry.Result == Result.ReadAgain)
            .Select(entry => HelperItem.ReadAgain(entry, telling))]);
        yield return new("hold", phrases[Phrase.Group.ToHold], HelperRows.Hold(telling));
        var left = list.Looks.Count - Listing.LooksShown;
        yield return new("look", phrases[Phrase.Helper.Look], HelperRows.Looks(list, telling),
            left > 0 ? Sentence.Closed(phrases.Count(Phrase.Say.More, left)) : "");
        yield return new("hidden", phrases[Phrase.Group.Hidden], HelperRows.Hidden(telling));
        yield return new("notes", phrases[Phrase.Group.Notes], HelperRows.Said(telling.Walk.Notes, telling));

        IReadOnlyList<HelperRow> Own(IEnumerable<Entry> entries) => [.. entries.Select(entry => HelperItem.Own(entry, telling))];
    }

    private static string Counted(string key, int count, Phrases phrases) => count switch
    {
        0 => phrases[key + "-none"],
        1 => phrases[key + "-one"],
        _ => phrases.Count(key, count),
    };
}
