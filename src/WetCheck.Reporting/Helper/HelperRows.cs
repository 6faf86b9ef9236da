using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Rows of the helper's list that are nothing to fix.</summary>
internal static class HelperRows
{
    /// <summary>Cautions and notes, in the helper's words where the rule has them.</summary>
    public static IReadOnlyList<HelperRow> Said(IReadOnlyList<Check> checks, Telling telling) => [.. checks.Select(check => HelperRow.Of(
        Naming.Number(check.Rule, check.Part),
        Mark.None,
        Short(RuleText.Helper(check, telling) is { Length: > 0 } own ? own : RuleText.For(check, telling).Say)))];

    /// <summary>What the plan may not pass; a reading by a name that is spoken, not by its word in the file.</summary>
    public static IReadOnlyList<HelperRow> Hold(Telling telling) => [.. Lines.Kept(telling).Select(kept => HelperRow.Of(
        kept.Entry.Number,
        Mark.None,
        Short(telling.Phrases.Say(Phrase.Helper.Hold, ("measure", Measure(kept.Hold, telling)),
            ("bound", Lines.Amount(kept.Hold, telling))))))];

    public static IReadOnlyList<HelperRow> Looks(Listing list, Telling telling) =>
        [.. list.Looks.Take(Listing.LooksShown).Select(look => Look(look.Look, telling))];

    public static IReadOnlyList<HelperRow> Hidden(Telling telling) =>
        [.. telling.Walk.Entries.Where(entry => entry.Result == Result.HiddenNow).Select(entry => HelperRow.Of(
        entry.Number,
        Mark.HiddenNow,
        Short(telling.Phrases.Say(Phrase.Helper.HiddenNow, ("part", Sentence.Capital(Naming.Part(entry.Worst.Part, telling.Phrases)))))))];

    public static string Short(string text) => Sentence.Joined(ShortSentences.Of(text));

    /// <summary>
    /// A question that a helper can answer with eye or tape; what is to be asked of others, or too long, is looked at
    /// together.
    /// </summary>
    private static HelperRow Look(Look look, Telling telling)
    {
        var phrases = telling.Phrases;
        Words? ask = look switch
        {
            { Reading: { Effort: not Effort.Ask } reading } => reading.Ask,
            { Fact.Reading: FactId.Whole, Parts: [{ Kind: var kind }, ..] } => kind.AskWhole,
            {
                Fact.Reading: FactId.Presence,
                Parts: [{ Kind: var kind }, ..] parts
            } when parts.All(part => part.Kind == kind) => kind.AskPresence,
            _ => null,
        };
        // A question of a whole list, or of what there is, names it itself.
        var part = look.Parts.Count > 0 && (look.Reading is not null || ask is null)
            ? Sentence.Closed(Sentence.Capital(Naming.Parts(look.Parts, phrases))) : "";
        return new HelperRow(
            look.Number,
            Mark.ToCheck,
            "",
            ShortSentences.Whole(part) ? part : Sentence.Closed(Sentence.Capital(Naming.Part(look.Parts[0], phrases))),
            [ask is { En.Length: > 0 } && Fits(ask) ? phrases.Of(ask) : ask is not null
                && look.Reading is { Choices.Count: > 0 } choice ? Which(choice, phrases)
                : phrases[Phrase.Helper.Together]]);
    }

    /// <summary>A long question about a choice is asked by its answers.</summary>
    private static string Which(ReadingKind reading, Phrases phrases) =>
        Short(phrases.Say(Phrase.Helper.Which,
            ("choices", phrases.List([.. reading.Choices.Select(choice => phrases.Of(choice.Say))], Phrase.Say.Or))));

    /// <summary>In both languages, or in neither: a row is one row.</summary>
    private static bool Fits(Words ask) => ShortSentences.Whole(ask.En) && ShortSentences.Whole(ask.Es ?? ask.En);

    private static string Measure(Hold hold, Telling telling)
    {
        var part = telling.PartOf(hold.Fact.Id);
        var reading = telling.Phrases.Find("helper.measure." + hold.Fact.Kind.Name.Replace(' ', '-')) ?? Naming.Reading(hold.Fact.Kind);
        return part is null ? reading : $"{Naming.Part(part, telling.Phrases)}, {reading}";
    }
}
