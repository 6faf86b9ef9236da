using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>
/// The page the owner keeps, in the order in which it is read: so each word of the trade is explained where it stands
/// first.
/// </summary>
/// <param name="IsUnread">Nobody has read anything yet: the page tells what to ask to see.</param>
/// <param name="StopsGoOn">Said where the Stops may not fit on the first page; else empty.</param>
/// <param name="Nobody">Looks that are owed, in the owner's words; none where <paramref name="See"/> has them.</param>
internal sealed record OwnerPage(
    Listing List,
    bool IsUnread,
    string Verdict,
    string Summary,
    string SayThis,
    IReadOnlyList<string> How,
    string StopsGoOn,
    IReadOnlyList<OwnerGroup> Groups,
    IReadOnlyList<Line> Hold,
    IReadOnlyList<string> StopIf,
    IReadOnlyList<string> Say,
    IReadOnlyList<OwnerLine> Nobody,
    string NobodyMore,
    IReadOnlyList<Line> Hidden,
    IReadOnlyList<Line> Care,
    IReadOnlyList<Line> Notes,
    IReadOnlyList<OwnerSection> See)
{
    /// <summary>As many Stops as a first page has room for.</summary>
    private const int StopsOnPage = 4;

    public static OwnerPage Of(Walk walk, Listing list)
    {
        var telling = new Telling(walk, list.Phrases);
        var phrases = list.Phrases;
        var first = new FirstUse(Glossary.Of(walk.Book, phrases, walk.Job.Method));
        var unread = walk.Job.Parts.All(part => part.Readings.Values.All(readings => readings.Count == 0));
        var toFix = walk.ToFix.ToList();
        var shown = unread ? [] : walk.Looks.Take(Listing.LooksShown).ToList();

        // Members are made from top to bottom.
        return new OwnerPage(
            list,
            unread,
            first.In(Opening.Verdict(telling, unread)),
            first.In(Sentence.Joined(Opening.Why(telling, unread), Opening.Counts(telling))),
            first.InSpeech(Opening.SayThis(telling, unread)) is var (said, meanings) ? said + meanings : "",
            toFix.Count == 0 ? [] : [phrases[Phrase.Owner.Photograph], first.In(phrases[Phrase.Owner.Measure])],
            toFix.Count(entry => entry.Severity == Severity.Stop) > StopsOnPage ? phrases[Phrase.Owner.StopsGoOn] : "",
            [.. list.Groups.Select(group => new OwnerGroup(
                group.Key,
                phrases.Find("owner.group-" + group.Key) ?? group.Title,
                [.. group.Items.Select(item => OwnerEntry.Of(item, telling, first))]))],
            OwnerHold.Of(telling, first),
            [.. StopLines.Of(list).Select(first.In)],
            toFix.Count == 0 ? [] : [phrases.Say(Phrase.Owner.HoldOn, ("number", toFix[0].Number)), phrases[Phrase.Owner.Wait]],
            [.. shown.Select(look => (Line: SeeLine.Of(look, telling), Looks.Of(look, telling).Title))
                .Distinct()
                .Select(one => OwnerLine.Of(one.Line, one.Title, phrases, first))],
            !unread && walk.Looks.Count > shown.Count ? phrases.Count(Phrase.Say.More, walk.Looks.Count - shown.Count) : "",
            Explained(list.Hidden, first),
            Explained(list.Cautions, first),
            Explained(list.Notes, first),
            [.. AskToSee.Of(telling, unread ? walk.Looks : [])
                .Select(group => OwnerSection.Of(group, walk.Job.Method is not null, phrases, first))]);
    }

    private static IReadOnlyList<Line> Explained(IReadOnlyList<Line> lines, FirstUse first) =>
        [.. lines.Select(line => new Line(line.Number, first.In(line.Text)))];
}
