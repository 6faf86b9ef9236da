using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The first lines of the owner's page: what not to do yet, why now, how many things, what to say.</summary>
internal static class Opening
{
    public static string Verdict(Telling telling, bool isUnread)
    {
        var phrases = telling.Phrases;
        return isUnread ? phrases[Phrase.Owner.Unread] : telling.Walk.Verdict switch
        {
            Model.Verdict.NotReady =>
                phrases.Find("owner.not-ready-at." + telling.Job.Stage)
                ?? phrases.Say(Phrase.Owner.NotReady, ("next", VerdictLines.Next(telling))),
            Model.Verdict.Unfinished => phrases[Phrase.Owner.Unfinished],
            _ => phrases[Phrase.Owner.NothingOwed],
        };
    }

    public static string Why(Telling telling, bool isUnread) => telling.Phrases[
        isUnread ? Phrase.Owner.NowUnread : telling.Job is { Method: { } method, Stage: { } stage }
            && method.Stops[^1].Name == stage ? Phrase.Owner.NowLast : Phrase.Owner.Now];

    /// <summary>Whole sentences; what there is none of is not spoken of.</summary>
    public static string Counts(Telling telling)
    {
        var (walk, phrases) = (telling.Walk, telling.Phrases);
        var all = walk.ToFix.ToList();
        var paper = all.Where(entry => entry.Paper == Paper.Correction).Select(entry => entry.Number).ToList();
        return Sentence.Joined(
        [
            Counted(Phrase.Owner.Fix, all.Count, phrases),
            .. Enum.GetValues<Severity>()
                .Select(severity =>
                Counted("owner." + Keys.Of(severity), all.Count(entry => entry.Severity == severity), phrases)),
            Counted(Phrase.Owner.OnPaper, paper.Count, phrases, ("numbers", Numbers.Few(paper, phrases))),
            Counted(Phrase.Owner.Again, walk.Entries.Count(entry => entry.Result == Result.ReadAgain), phrases),
            Counted(Phrase.Owner.Check, walk.Looks.Count, phrases),
        ]);
    }

    public static string SayThis(Telling telling, bool isUnread) => isUnread
        ? telling.Phrases[Phrase.Owner.ShowMe]
        : telling.Phrases.Say(telling.Walk.Verdict == Model.Verdict.NotReady ? Phrase.Owner.OverThis
            : Phrase.Owner.HowNow, ("next", VerdictLines.Next(telling)));

    private static string Counted(string key, int count, Phrases phrases, params ReadOnlySpan<(string, string)> slots) => count switch
    {
        0 => "",
        1 => phrases.Say(key + "-one", slots),
        _ => phrases.Say(key, [("count", count.ToString(System.Globalization.CultureInfo.InvariantCulture)), .. slots]),
    };
}
