using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The first lines of the owner's page: what not to do yet, why now, how many things, what to say.</summary>
internal static class Opening
{
    public static string Verdict(Telling telling, bool isUnread)
    {
        var phrases = telling.Phrases;
        return isUnread ? phrases["owner.unread"] : telling.Walk.Verdict switch
        {
            Model.Verdict.NotReady => phrases.Find("owner.not-ready-at." + telling.Job.Stage) ?? phrases.Say("owner.not-ready", ("next", VerdictLines.Next(telling))),
            Model.Verdict.Unfinished => phrases["owner.unfinished"],
            _ => phrases["owner.nothing-owed"],
        };
    }

    public static string Why(Telling telling, bool isUnread) => telling.Phrases[
        isUnread ? "owner.now-unread" : telling.Job is { Method: { } method, Stage: { } stage } && method.Stops[^1].Name == stage ? "owner.now-last" : "owner.now"];

    /// <summary>Whole sentences; what there is none of is not spoken of.</summary>
    public static string Counts(Telling telling)
    {
        var (walk, phrases) = (telling.Walk, telling.Phrases);
        var all = walk.ToFix.ToList();
        var paper = all.Where(entry => entry.Paper == Paper.Correction).Select(entry => entry.Number).ToList();
        return Sentence.Joined(
        [
            Counted("owner.fix", all.Count, phrases),
            .. Enum.GetValues<Severity>().Select(severity => Counted("owner." + Keys.Of(severity), all.Count(entry => entry.Severity == severity), phrases)),
            Counted("owner.on-paper", paper.Count, phrases, ("numbers", Numbers.Few(paper, phrases))),
            Counted("owner.again", walk.Entries.Count(entry => entry.Result == Result.ReadAgain), phrases),
            Counted("owner.check", walk.Looks.Count, phrases),
        ]);
    }

    public static string SayThis(Telling telling, bool isUnread) => isUnread
        ? telling.Phrases["owner.show-me"]
        : telling.Phrases.Say(telling.Walk.Verdict == Model.Verdict.NotReady ? "owner.over-this" : "owner.how-now", ("next", VerdictLines.Next(telling)));

    private static string Counted(string key, int count, Phrases phrases, params ReadOnlySpan<(string, string)> slots) => count switch
    {
        0 => "",
        1 => phrases.Say(key + "-one", slots),
        _ => phrases.Say(key, [("count", count.ToString(System.Globalization.CultureInfo.InvariantCulture)), .. slots]),
    };
}
