using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Readiness in a few lines: never a word on the shower.</summary>
internal static class VerdictLines
{
    public static IReadOnlyList<string> Of(Telling telling)
    {
        var ready = Ready(telling);
        return telling.Walk.Verdict == Verdict.NotReady ? [.. NotReady(telling, ready)] : [ready];
    }

    /// <summary>"NOT READY for the flood test."</summary>
    public static string Ready(Telling telling) => telling.Walk.Verdict switch
    {
        Verdict.NotReady => telling.Phrases.Say(Phrase.Verdict.NotReady, ("next", Next(telling))),
        Verdict.Unfinished => telling.Phrases[Phrase.Verdict.Unfinished],
        _ => telling.Phrases[Phrase.Verdict.NothingOwed],
    };

    private static IEnumerable<string> NotReady(Telling telling, string ready)
    {
        var phrases = telling.Phrases;
        var all = telling.Walk.ToFix.ToList();
        yield return $"{ready} {phrases.Count(Phrase.Verdict.ToFix, all.Count)}";
        yield return string.Join(", ",
            all.GroupBy(entry => entry.Severity).OrderBy(group => group.Key).Select(group => group.Key == Severity.Stop
            ? phrases.Say(Phrase.Verdict.Stops, ("count", Severities(group)), ("numbers", Numbers.Few(NumbersOf(group), phrases)))
            : Severities(group))) + ".";
        var onPaper = all.Where(entry => entry.Paper == Paper.Correction).ToList();
        if (onPaper.Count > 0)
        {
            yield return phrases.Say(
                onPaper.Count == all.Count ? Phrase.Verdict.AllOnPaper : Phrase.Verdict.OnPaper,
                ("count", onPaper.Count.ToString(CultureInfo.InvariantCulture)),
                ("all", all.Count.ToString(CultureInfo.InvariantCulture)),
                ("numbers", Numbers.Few(NumbersOf(onPaper), phrases)));
        }

        string Severities(IGrouping<Severity, Entry> group) => phrases.Count("count." + Keys.Of(group.Key), group.Count());
    }

    /// <summary>"the flood test".</summary>
    public static string Next(Telling telling) =>
        (telling.Job.Stage is { } stage ? telling.Phrases.Find("next." + stage) : null) ?? telling.Phrases[Phrase.Next.Cover];

    /// <summary>Values that could not be read, by their lines.</summary>
    public static IEnumerable<string> Unread(Telling telling)
    {
        var lines = telling.Walk.Problems.Where(problem => problem.Effect == Effect.Blank
            && problem.At.File == telling.Job.File).Select(problem => problem.At.Line).Distinct().Order().ToList();
        if (lines.Count > 0)
        {
            yield return telling.Phrases.Say(
                lines.Count == 1 ? Phrase.Verdict.UnreadOne : Phrase.Verdict.Unread,
                ("lines", string.Join(", ", lines.Select(line => line.ToString(CultureInfo.InvariantCulture)))));
        }
    }

    private static List<string> NumbersOf(IEnumerable<Entry> entries) => [.. entries.Select(entry => entry.Number)];
}
