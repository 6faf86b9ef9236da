using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Readiness in a few lines: never a word on the shower.</summary>
internal static class VerdictLines
{
    public static IReadOnlyList<string> Of(Telling telling)
    {
        var walk = telling.Walk;
        var lines = walk.Verdict switch
        {
            Verdict.NotReady => NotReady(telling),
            Verdict.Unfinished => [telling.Phrases["verdict.unfinished"]],
            _ => [telling.Phrases["verdict.nothing-owed"]],
        };
        return [.. lines, .. Unread(telling)];
    }

    private static IEnumerable<string> NotReady(Telling telling)
    {
        var phrases = telling.Phrases;
        var all = telling.Walk.ToFix.ToList();
        yield return phrases.Say("verdict.not-ready", ("next", Next(telling)), ("count", all.Count.ToString(CultureInfo.InvariantCulture)));
        yield return string.Join(", ", all.GroupBy(entry => entry.Severity).OrderBy(group => group.Key).Select(group => group.Key == Severity.Stop
            ? phrases.Say("verdict.stops", ("count", Severities(group)), ("numbers", Numbers.Few(NumbersOf(group), phrases)))
            : Severities(group))) + ".";
        var onPaper = all.Where(entry => entry.Paper == Paper.Correction).ToList();
        if (onPaper.Count > 0)
        {
            yield return phrases.Say(
                onPaper.Count == all.Count ? "verdict.all-on-paper" : "verdict.on-paper",
                ("count", onPaper.Count.ToString(CultureInfo.InvariantCulture)),
                ("all", all.Count.ToString(CultureInfo.InvariantCulture)),
                ("numbers", Numbers.Few(NumbersOf(onPaper), phrases)));
        }

        string Severities(IGrouping<Severity, Entry> group) => phrases.Count("count." + Keys.Of(group.Key), group.Count());
    }

    public static string Next(Telling telling) =>
        (telling.Job.Stage is { } stage ? telling.Phrases.Find("next." + stage) : null) ?? telling.Phrases["next.cover"];

    /// <summary>Values that could not be read, by their lines.</summary>
    private static IEnumerable<string> Unread(Telling telling)
    {
        var lines = telling.Walk.Problems.Where(problem => problem.Effect == Effect.Blank).Select(problem => problem.At.Line).Distinct().Order().ToList();
        if (lines.Count > 0)
        {
            yield return telling.Phrases.Say(
                lines.Count == 1 ? "verdict.unread-one" : "verdict.unread",
                ("lines", string.Join(", ", lines.Select(line => line.ToString(CultureInfo.InvariantCulture)))));
        }
    }

    private static List<string> NumbersOf(IEnumerable<Entry> entries) => [.. entries.Select(entry => entry.Number)];
}
