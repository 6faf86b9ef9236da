using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Lines of a list that are no entries to fix.</summary>
internal static class Lines
{
    /// <summary>What nobody can see any more, and what else would do.</summary>
    public static IReadOnlyList<Line> Hidden(Telling telling) =>
        [.. telling.Walk.Entries.Where(entry => entry.Result == Result.HiddenNow)
            .Select(entry => new Line(entry.Number, Hidden(entry.Worst, telling)))];

    /// <summary>Values of the plan to keep, so that what is good on paper stays so. Of several bounds on one value the tightest.</summary>
    public static IReadOnlyList<Line> Hold(Telling telling) => [.. Kept(telling)
        .Select(kept => new Line(kept.Entry.Number, telling.Phrases.Say(
            Phrase.Hold.Keep,
            ("place", Naming.Place(kept.Entry.Worst.Part, telling.Phrases)),
            ("hold", Bound(kept.Hold, telling)))))];

    public static IEnumerable<(Entry Entry, Hold Hold)> Kept(Telling telling) => telling.Walk.Entries
        .Where(entry => entry.Paper == Paper.Good)
        .SelectMany(entry => entry.Worst.Hold.Select(hold => (Entry: entry, Hold: hold)))
        .GroupBy(kept => (kept.Hold.Fact.Id, kept.Hold.By))
        .Select(group => group.Key.By is Comparison.AtLeast or Comparison.Over
            ? group.MaxBy(kept => kept.Hold.Bound)
            : group.MinBy(kept => kept.Hold.Bound));

    public static IReadOnlyList<Line> Said(IReadOnlyList<Check> checks, Telling telling) => [.. checks.Select(check =>
    {
        var text = RuleText.For(check, telling);
        return new Line(Naming.Number(check.Rule, check.Part),
            check.Paper == Paper.None ? text.Say
            : telling.Phrases.Say(Phrase.Say.AsPlanned, ("say", text.Say)), text.Two.Length > 0 ? text.Two : text.Why);
    })];

    /// <summary>"curb, cap adds: 1-1/8" or less".</summary>
    public static string Bound(Hold hold, Telling telling)
    {
        var part = telling.PartOf(hold.Fact.Id);
        return telling.Phrases.Say(
            Phrase.Hold.Bound,
            ("part", part is null ? hold.Fact.Id.Part : Naming.Part(part, telling.Phrases)),
            ("reading", Naming.Reading(hold.Fact.Kind)),
            ("bound", Amount(hold, telling)));
    }

    /// <summary>"1-1/8" or less".</summary>
    public static string Amount(Hold hold, Telling telling) => Bound(hold, Found.UnitOf(hold.Fact, telling), telling);

    /// <summary>A height at its datum or below it can't be told without naming the datum.</summary>
    private static string Bound(Hold hold, Unit unit, Telling telling) =>
        hold is { Fact.Kind: { Is: Form.Height, From: { } datum }, Bound.Sign: <= 0 }
        ? Limit.Height(hold.By, new Quantity(Measure.Length, hold.Bound, unit), telling.Datum(datum), telling.Phrases)
        : telling.Show.Limit(hold.Bound, unit, hold.By);

    private static string Hidden(Check check, Telling telling)
    {
        var hangs = check.Judgement.Hangs;
        var hang = hangs.FirstOrDefault(h => h.Fact?.Sight == Sight.Hidden || h.Fact?.SaidHidden == true)
            ?? (hangs.Count > 0 ? hangs[0] : null);
        var proof = hang?.Fact is { } fact ? telling.Phrases.Of(fact.Kind.Proof) : "";
        return telling.Phrases.Say(
            hang?.Near == true ? Phrase.Hidden.Near : Phrase.Hidden.Nobody,
            ("part", Sentence.Capital(Naming.Part((hang is null ? null : telling.PartOf(hang.Id)) ?? check.Part, telling.Phrases))),
            ("proof", proof.Length > 0 ? proof : telling.Phrases[Phrase.Hidden.Proof]));
    }
}
