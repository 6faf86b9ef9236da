using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What a rule says to the owner, its slots filled.</summary>
internal sealed record OwnerText(string Seen, string Ask, string Good)
{
    public static OwnerText For(Entry entry, Telling telling)
    {
        var texts = telling.Texts(entry.Rule);
        var slots = RuleText.SlotsOf(entry.Worst, entry.Same.Count(), Items.FoundIn(entry, telling), telling);
        var good = Evidence.Of(entry.Worst).Test is { Fact.Kind.Is: Form.Height, Limit: not null } height
            ? Slots.Fill(texts.Good, ("limit", Plain(height, telling)))
            : texts.Good;
        return new OwnerText(Sentence.Capital(Slots.Fill(texts.Seen, slots)), Slots.Fill(texts.Ask, slots), Slots.Fill(good, slots));
    }

    /// <summary>A good answer where nobody has looked yet: every limit that may hold is named.</summary>
    public static string GoodIf(Check check, Telling telling) => Slots.Fill(telling.Texts(check.Rule).Good, ("limit", Limits(check, telling)));

    /// <summary>The text names the place itself.</summary>
    private static bool NamesPlace(Rule rule, Telling telling) =>
        telling.Texts(rule).Seen is var seen && (seen.Contains("{place}", StringComparison.Ordinal) || seen.Contains("{part}", StringComparison.Ordinal));

    /// <summary>Where it is, if the text does not name it; else empty.</summary>
    public static string Lead(Item item, Telling telling) =>
        item.Entry.Worst.Part.Place is null || NamesPlace(item.Entry.Rule, telling) ? "" : item.Place;

    private static string Limits(Check check, Telling telling)
    {
        var limits = check.Judgement.Sides
            .Select(Evidence.Deciding)
            .OfType<Measured>()
            .Where(test => test.Condition is Condition.Compare && (test.Limit is not null || OnTape.Bound(test) is not null))
            .Select(test => Plain(test, telling))
            .Distinct()
            .ToList();
        limits = limits.Count > 0 ? limits : [.. OfRule(check.Rule).Select(limit => telling.Show.Of(limit)).Distinct()];
        return limits.Count switch
        {
            0 => telling.Phrases["slot.limit"],
            1 => limits[0],
            _ => telling.Phrases.Say("owner.ask-which", ("limits", telling.Phrases.List(limits, "say.or"))),
        };
    }

    /// <summary>All its limits, where nothing is known that tells which holds.</summary>
    private static IEnumerable<Quantity> OfRule(Rule rule) => rule.Versions.Select(version => version.Limit).OfType<Quantity>()
        .Concat(rule.Body is RuleBody.Require { Holds: { } holds }
            ? holds.Parts().OfType<Condition.Compare>().Select(compare => compare.To).OfType<Operand.Fixed>().Select(held => held.Quantity)
            : []);

    /// <summary>As the rule has it: the level that a height is taken from stands in the sentence.</summary>
    private static string Plain(Measured test, Telling telling) =>
        test.Limit is { } limit ? telling.Show.Of(limit) : Limit.Plain(test, telling);
}
