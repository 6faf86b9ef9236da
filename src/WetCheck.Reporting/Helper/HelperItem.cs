using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>An entry as a row to work by: what, found and should be on one line, what to do.</summary>
internal static class HelperItem
{
    public static HelperRow Own(Entry entry, Telling telling)
    {
        var item = Items.Of(entry, telling);
        return Row(item, telling, Said(entry, item, telling), item.Mark == Mark.Stop ? "" : item.Before);
    }

    /// <summary>Work of another trade: whose it is, and hands off.</summary>
    public static HelperRow NotYours(Entry entry, Telling telling)
    {
        var own = RuleText.Helper(entry, telling);
        var leave = telling.Phrases.Find("helper.leave." + entry.Rule.WorkOf) ?? telling.Phrases[Phrase.Helper.Leave.Other];
        return Row(Items.Of(entry, telling), telling, own.Length > 0 ? own : leave);
    }

    public static HelperRow ReadAgain(Entry entry, Telling telling)
    {
        var item = Items.Of(entry, telling);
        return Row(item, telling, item.Do, item.Before);
    }

    /// <summary>What is not the helper's alone says so in the rule; else the fix.</summary>
    private static string Said(Entry entry, Item item, Telling telling) =>
        RuleText.Helper(entry, telling) is { Length: > 0 } own ? own : item.Do;

    private static HelperRow Row(Item item, Telling telling, params IEnumerable<string> told) => new(
        item.Number,
        item.Mark,
        item.Mark == Mark.Stop ? telling.Phrases[Phrase.Severity.Stop].ToUpperInvariant() : "",
        Title(item, telling.Phrases),
        [.. new[] { Measured(item, telling.Phrases), Sentence.Joined(told.SelectMany(ShortSentences.Of)) }.Where(line => line.Length > 0)]);

    /// <summary>Where and what; in two sentences where one would be long.</summary>
    private static string Title(Item item, Phrases phrases)
    {
        var title = Sentence.Closed(phrases.Say(item.OnPaper ? Phrase.Say.TitleOnPaper : Phrase.Say.Title,
            ("place", item.Place), ("what", item.What)));
        return ShortSentences.Whole(title) ? title : Sentence.Joined(
            Sentence.Closed(item.Place),
            HelperRows.Short(Sentence.Closed(Sentence.Capital(item.OnPaper
                ? phrases.Say(Phrase.Helper.OnPaper, ("what", item.What)) : item.What))));
    }

    /// <summary>Both on one line, on the same tape.</summary>
    private static string Measured(Item item, Phrases phrases) => Sentence.Joined(new[]
        {
            item.Found.Length == 0 ? "" : phrases.Say(item.Planned ? Phrase.Helper.Planned : Phrase.Helper.Found, ("found", item.Found)),
            item.Should.Length == 0 ? "" : phrases.Say(Phrase.Helper.Should, ("limit", item.Found.Length > 0 ? item.Brief : item.Should)),
        }.SelectMany(ShortSentences.Of));
}
