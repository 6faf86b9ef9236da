namespace WetCheck.Reporting;

/// <summary>One thing to ask to see, as it is printed.</summary>
internal sealed record OwnerLine(string Number, string See, string Good)
{
    /// <param name="title">What is known of it already; may be empty.</param>
    public static OwnerLine Of(SeeLine line, string title, Phrases phrases, FirstUse first) => new(
        line.Number,
        first.In(Sentence.Joined(Sentence.Closed(title), line.See)),
        line.Good.Length == 0 ? "" : first.In(phrases.Say(Phrase.Owner.Good, ("good", line.Good))));
}

/// <summary>What to ask to see before one cover.</summary>
internal sealed record OwnerSection(string Title, IReadOnlyList<OwnerLine> Lines, string More)
{
    /// <param name="isOrdered">The method is known, so that what has no cover can be seen at any time.</param>
    public static OwnerSection Of(SeeGroup group, bool isOrdered, Phrases phrases, FirstUse first) => new(
        first.In(group.Cover.Length == 0 ? phrases[isOrdered ? Phrase.Owner.SeeNow : Phrase.Owner.SeeAny] : Sentence.Capital(group.Cover)),
        [.. group.Lines.Select(line => OwnerLine.Of(line, "", phrases, first))],
        group.More == 0 ? "" : phrases.Count(Phrase.Say.More, group.More));
}
