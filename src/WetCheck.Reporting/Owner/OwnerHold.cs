namespace WetCheck.Reporting;

/// <summary>Values of the plan that keep what is good on paper good: the question for each, and its answer.</summary>
internal static class OwnerHold
{
    public static IReadOnlyList<Line> Of(Telling telling, FirstUse first) => [.. Lines.Kept(telling).Select(kept => new Line(
        kept.Entry.Number,
        Sentence.Joined(
            telling.PartOf(kept.Hold.Fact.Id) is { Place: not null } part ? Sentence.Closed(Naming.Place(part, telling.Phrases)) : "",
            OwnerEntry.Asked(telling.Phrases.Of(kept.Hold.Fact.Kind.Ask), telling.Phrases, first),
            first.In(telling.Phrases.Say(Phrase.Owner.Good, ("good", Sentence.Closed(Lines.Amount(kept.Hold, telling))))))))];
}
