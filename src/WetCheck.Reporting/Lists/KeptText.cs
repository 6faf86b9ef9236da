using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What one more answer changed, and nothing else.</summary>
public static class KeptText
{
    /// <param name="opening">"Kept.", or what somebody else kept.</param>
    /// <param name="left">Questions that are still open.</param>
    /// <returns>"Kept. 214-D OK. 4 left.", in lines of at most 78; below it each Correction that came or has another
    /// reading, in four lines.</returns>
    public static IReadOnlyList<string> Of(string opening, Walk before, Walk now, int left, Phrases phrases)
    {
        var was = All(before).ToDictionary(entry => entry.Number, StringComparer.Ordinal);
        var (old, telling) = (new Telling(before, phrases), new Telling(now, phrases));
        var fix = now.ToFix.Where(entry => !was.TryGetValue(entry.Number, out var earlier)
            || earlier.Result != Result.Correction || Found(earlier, old) != Found(entry, telling));
        return
        [
            .. Column.Wrap(Sentence.Joined(
                opening,
                Sentence.Closed(string.Join("; ", Changed(was, now, phrases))),
                phrases.Count(Phrase.Kept.Left, left))),
            .. fix.SelectMany(entry => EntryText.Of(Items.Of(entry, telling), phrases)),
            .. Hold(old, telling),
        ];
    }

    /// <summary>By result, so that one word stands for all numbers that came to it.</summary>
    private static IEnumerable<string> Changed(Dictionary<string, Entry> was, Walk now, Phrases phrases) => All(now)
        .Where(entry => !was.TryGetValue(entry.Number, out var old) || (old.Result, old.Paper) != (entry.Result, entry.Paper))
        .Select(entry => (entry.Number, Result: Told(entry, phrases)))
        .Concat(was.Keys.Except(All(now).Select(entry => entry.Number))
            .Select(gone => (Number: gone, Result: phrases[Phrase.Result.NotHere])))
        .GroupBy(changed => changed.Result)
        .Select(group => $"{string.Join(", ", group.Select(changed => changed.Number))} {group.Key}");

    /// <summary>Values to hold that were not asked to be held before.</summary>
    private static IEnumerable<string> Hold(Telling before, Telling now)
    {
        var was = Lines.Hold(before).Select(line => line.Text).ToHashSet(StringComparer.Ordinal);
        return Lines.Hold(now).Where(line => !was.Contains(line.Text))
            .SelectMany(line => Column.Wrap(line.Text, Column.Numbered(line.Number)));
    }

    private static (string, Paper) Found(Entry entry, Telling telling) => (Items.FoundIn(entry, telling), entry.Paper);

    private static IEnumerable<Entry> All(Walk walk) =>
        walk.Entries.SelectMany(entry => entry.Also.Prepend(entry)).DistinctBy(entry => entry.Number);

    private static string Told(Entry entry, Phrases phrases) =>
        Keys.Of(entry.Paper) is { Length: > 0 } paper
            ? $"{phrases["result." + Keys.Of(entry.Result)]}, {phrases["result." + paper]}"
            : phrases["result." + Keys.Of(entry.Result)];
}
