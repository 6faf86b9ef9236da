using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What a rule says to the owner, its slots filled.</summary>
internal sealed record OwnerText(string Seen, string Ask, string Good)
{
    public static OwnerText For(Entry entry, Telling telling)
    {
        var texts = telling.Texts(entry.Rule);
        var slots = RuleText.SlotsOf(entry.Worst, entry.Same.Count(), Items.FoundIn(entry, telling), telling);
        var good = Evidence.Of(entry.Worst).Test is { } test
            ? Slots.Fill(texts.Good, ("limit", OwnerLimit.Of(entry.Rule, test, telling))) : texts.Good;
        return new OwnerText(Sentence.Capital(Slots.Fill(texts.Seen, slots)), Slots.Fill(texts.Ask, slots), Slots.Fill(good, slots));
    }

    /// <summary>A good answer where nobody has looked yet: every limit that may hold is named.</summary>
    public static string GoodIf(Check check, Telling telling) =>
        Slots.Fill(telling.Texts(check.Rule).Good, ("limit", OwnerLimit.Of(check, telling)));

    /// <summary>The text names the place itself.</summary>
    private static bool NamesPlace(Rule rule, Telling telling) =>
        telling.Texts(rule).Seen is var seen
            && (seen.Contains("{place}", StringComparison.Ordinal)
            || seen.Contains("{part}", StringComparison.Ordinal));

    /// <summary>Where it is, if the text does not name it; else empty.</summary>
    public static string Lead(Item item, Telling telling) =>
        item.Entry.Worst.Part.Place is null || NamesPlace(item.Entry.Rule, telling) ? "" : item.Place;
}
