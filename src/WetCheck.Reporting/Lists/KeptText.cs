using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What one more answer changed, and nothing else.</summary>
public static class KeptText
{
    /// <returns>"Kept. 214-D OK. 4 left.", in lines of at most 78.</returns>
    public static IReadOnlyList<string> Of(Walk before, Walk now, Phrases phrases)
    {
        var was = All(before).ToDictionary(entry => entry.Number, StringComparer.Ordinal);
        var changed = All(now)
            .Where(entry => !was.TryGetValue(entry.Number, out var old) || (old.Result, old.Paper) != (entry.Result, entry.Paper))
            .Select(entry => $"{entry.Number} {Result(entry, phrases)}")
            .Concat(was.Keys.Except(All(now).Select(entry => entry.Number)).Select(gone => $"{gone} {phrases["result.not-here"]}"));
        return Column.Wrap(Sentence.Joined(
            phrases["kept.kept"],
            Sentence.Closed(string.Join("; ", changed)),
            phrases.Count("kept.left", now.Looks.Count)));
    }

    private static IEnumerable<Entry> All(Walk walk) => walk.Entries.SelectMany(entry => entry.Also.Prepend(entry)).DistinctBy(entry => entry.Number);

    private static string Result(Entry entry, Phrases phrases) =>
        Keys.Of(entry.Paper) is { Length: > 0 } paper ? $"{phrases["result." + Keys.Of(entry.Result)]}, {phrases["result." + paper]}" : phrases["result." + Keys.Of(entry.Result)];
}
