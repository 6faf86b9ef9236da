namespace WetCheck.Reporting;

/// <summary>An entry in the owner's words.</summary>
/// <param name="Tag">Place, "on paper", whose work; may be empty.</param>
/// <param name="Seen">What was found, in whole sentences.</param>
/// <param name="Ask">The question, with its label and quotes.</param>
/// <param name="Good">A good answer, with its label.</param>
/// <param name="Before">"Before the boards."</param>
internal sealed record OwnerEntry(string Number, Mark Mark, string Tag, string Seen, string Ask, string Good, string Before)
{
    public static OwnerEntry Of(Item item, Telling telling, FirstUse first)
    {
        var text = item.Mark == Mark.ReadAgain ? Again(item, telling) : OwnerText.For(item.Entry, telling);
        return new OwnerEntry(
            item.Number,
            item.Mark,
            first.In(Sentence.Capital(TagOf(item, telling))),
            first.In(text.Seen),
            Asked(text.Ask, telling.Phrases, first),
            first.In(telling.Phrases.Say(Phrase.Owner.Good, ("good", text.Good))),
            item.Mark == Mark.Stop ? "" : first.In(item.Before));
    }

    public static string Asked(string ask, Phrases phrases, FirstUse first)
    {
        var (said, meanings) = first.InSpeech(ask);
        return phrases.Say(Phrase.Owner.Ask, ("ask", said)) + meanings;
    }

    /// <summary>A reading that can't be trusted yet accuses nobody: only the two numbers stand there.</summary>
    public static OwnerText Again(Item item, Telling telling) => new(
        Sentence.Joined(telling.Phrases.Say(Phrase.Owner.ReadAgain, ("part", item.Subject), ("found", item.Found),
            ("limit", item.Brief)), item.Do),
        telling.Phrases[Phrase.Owner.AskAgain],
        telling.Phrases[Phrase.Owner.GoodAgain]);

    private static string TagOf(Item item, Telling telling)
    {
        var phrases = telling.Phrases;
        return string.Join(", ", new[]
        {
            item.Mark == Mark.ReadAgain ? "" : OwnerText.Lead(item, telling),
            item.OnPaper ? phrases[Phrase.Result.OnPaper] : "",
            item.Mark == Mark.ReadAgain ? "" : phrases.Find("owner.for-" + item.Entry.Rule.WorkOf) ?? "",
        }.Where(part => part.Length > 0));
    }
}

/// <param name="Key">As the setter's group: <c>before-cover</c>.</param>
internal sealed record OwnerGroup(string Key, string Title, IReadOnlyList<OwnerEntry> Entries);
