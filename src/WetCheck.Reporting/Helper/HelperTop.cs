using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What a helper is told before the first thing, and asked before he starts.</summary>
internal static class HelperTop
{
    /// <summary>Shown back with the tape before work begins.</summary>
    private const int ShownBack = 2;

    public static string Stop(Telling telling) => telling.Walk.Verdict switch
    {
        Verdict.NotReady => telling.Phrases.Say(Phrase.Helper.Stop, ("next", VerdictLines.Next(telling))),
        Verdict.Unfinished => telling.Phrases[Phrase.Helper.Wait],
        _ => telling.Phrases[Phrase.Helper.Clear],
    };

    /// <summary>Named here, for they stand where the hands come to them, which may be on the next page.</summary>
    public static IEnumerable<string> Stops(HandsOrder order, Telling telling)
    {
        var stops = order.Stops.Select(entry => entry.Number).ToList();
        return stops.Count == 0 ? [] : [telling.Phrases.Say(Phrase.Helper.Stops, ("numbers", string.Join(", ", stops)))];
    }

    /// <summary>What today's things and those to read again are measured with, and what their work takes.</summary>
    public static IEnumerable<string> Tools(HandsOrder order, Telling telling)
    {
        var entries = order.Today.Concat(telling.Walk.Entries.Where(entry => entry.Result == Result.ReadAgain)).ToList();
        var tools = entries.SelectMany(entry => MeasuredWith(entry, telling))
            .Concat(entries.Select(entry => telling.Phrases.Find("helper.bring." + Naming.Digits(entry.Rule))).OfType<string>())
            .Distinct().ToList();
        return tools.Count == 0 ? [] : [telling.Phrases.Say(Phrase.Helper.Tools, ("tools", string.Join(", ", tools)))];
    }

    /// <summary>"Before you start, show me with the tape 132-B and 214-D. Tell me why."</summary>
    public static IEnumerable<string> ShowMe(HandsOrder order, Telling telling)
    {
        var measured = order.Today.Where(entry => MeasuredWith(entry, telling).Any()).ToList();
        var shown = (measured.Count > 0 ? measured : order.Today).Take(ShownBack).Select(entry => entry.Number).ToList();
        return shown.Count == 0 ? []
            : [telling.Phrases.Say(measured.Count > 0 ? Phrase.Helper.ShowTape : Phrase.Helper.Show,
            ("numbers", telling.Phrases.List(shown)))];
    }

    /// <summary>A height and a fall are taken from a level.</summary>
    private static IEnumerable<string> MeasuredWith(Entry entry, Telling telling)
    {
        if (Evidence.Of(entry.Worst).Test?.Fact is not { Kind: { Tool: { Marks.Count: > 0 } tool } kind })
        {
            yield break;
        }

        if (kind.Is is Form.Height or Form.Fall)
        {
            yield return telling.Phrases[Phrase.Helper.Level];
        }

        yield return telling.Phrases.Of(tool.Say);
    }
}
