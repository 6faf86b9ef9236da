using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>A rule's own words with their slots filled, for one entry.</summary>
internal sealed record RuleText(string Name, string Why, string Fix, string Say, string Two)
{
    public static RuleText For(Entry entry, Telling telling)
    {
        var texts = telling.Texts(entry.Rule);
        var count = entry.Same.Count();
        var name = count > 1 && texts.Many.Length > 0 ? texts.Many : texts.One;
        return Filled(texts, name, SlotsOf(entry.Worst, count, Items.FoundIn(entry, telling), telling));
    }

    /// <summary>Of a caution or a note.</summary>
    public static RuleText For(Check check, Telling telling)
    {
        var texts = telling.Texts(check.Rule);
        return Filled(texts, texts.One, SlotsOf(check, 1, null, telling));
    }

    /// <summary>Of a rule read without a job: slots are filled with words for them.</summary>
    public static RuleText For(Rule rule, Phrases phrases)
    {
        var texts = rule.In(phrases.Language);
        return Filled(texts, texts.One, WithoutJob(phrases));
    }

    /// <summary>The owner's question and what good looks like, of a rule read without a job.</summary>
    public static (string Ask, string Good) Owner(Rule rule, Phrases phrases)
    {
        var texts = rule.In(phrases.Language);
        return (Slots.Fill(texts.Ask, WithoutJob(phrases)), Slots.Fill(texts.Good, WithoutJob(phrases)));
    }

    private static (string, string)[] WithoutJob(Phrases phrases) =>
    [
        ("found", phrases[Phrase.Slot.Found]), ("limit", phrases[Phrase.Slot.Limit]), ("short", phrases[Phrase.Slot.Short]),
        ("count", phrases[Phrase.Slot.Count]), ("place", phrases[Phrase.Slot.Place]), ("part", phrases[Phrase.Slot.Part]),
    ];

    /// <summary>What a helper is told to do; empty where the fix will do.</summary>
    public static string Helper(Entry entry, Telling telling) => Slots.Fill(
        telling.Texts(entry.Rule).Helper, SlotsOf(entry.Worst, entry.Same.Count(), Items.FoundIn(entry, telling), telling));

    /// <summary>The same of a caution or a note.</summary>
    public static string Helper(Check check, Telling telling) =>
        Slots.Fill(telling.Texts(check.Rule).Helper, SlotsOf(check, 1, null, telling));

    private static RuleText Filled(RuleTexts texts, string name, (string, string)[] slots) => new(
        Slots.Fill(name, slots), Slots.Fill(texts.Why, slots), Slots.Fill(texts.Fix, slots),
            Slots.Fill(texts.Say, slots), Slots.Fill(texts.Two, slots));

    public static (string Slot, string Value)[] SlotsOf(Check check, int count, string? found, Telling telling)
    {
        var phrases = telling.Phrases;
        var test = Evidence.Of(check).Test;
        found = found is { Length: > 0 } ? found : test is not null
            && Tested.Found(test, telling) is { Length: > 0 } read ? read : phrases[Phrase.Slot.Found];
        var lacks = test is null ? "" : Short.By(test, telling);
        return
        [
            ("found", found),
            ("limit", test is null ? phrases[Phrase.Slot.Limit] : Limit.Plain(test, telling)),
            ("short", lacks.Length > 0 ? lacks : phrases[Phrase.Slot.Short]),
            ("count", count.ToString(CultureInfo.InvariantCulture)),
            ("place", check.Part.Place is { } place ? phrases.Of(place.Say) : Naming.Part(check.Part, phrases)),
            ("part", Naming.Part(check.Part, phrases)),
        ];
    }
}
