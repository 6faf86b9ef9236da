using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What to ask to see before each cover, in the order of the work.</summary>
internal static class AskToSee
{
    public const int AtMost = 9;

    /// <param name="looks">Those that are owed now, where nothing has been looked at yet; else none.</param>
    public static IReadOnlyList<SeeGroup> Of(Telling telling, IReadOnlyList<Look> looks)
    {
        var known = telling.Walk.Entries
            .Where(entry => entry.Result is Result.Correction or Result.ReadAgain)
            .Concat(looks.Count > 0 ? [] : telling.Walk.Looks.SelectMany(look => look.Settles.Concat(look.Bears))
                .Where(entry => entry.Result != Result.Later))
            .Select(entry => entry.Rule)
            .ToHashSet();
        var asked = looks.Select(look => SeeLine.Of(look, telling)).ToList();
        var rules = telling.Walk.Checks
            .Where(check => check.Result is Result.Later or Result.ToCheck && !known.Contains(check.Rule))
            .GroupBy(check => check.Rule)
            .OrderBy(group => group.Key.Severity).ThenBy(group => group.Key.Number)
            .Select(group => SeeLine.Of(Naming.Digits(group.Key), group.First(), telling));
        var covers = CoversOf(telling);
        return [.. asked.Concat(rules)
            .DistinctBy(line => line.See)
            .GroupBy(line => line.Cover)
            .OrderBy(group => covers.IndexOf(group.Key))
            .Select(group => new SeeGroup(group.Key, [.. group.Take(AtMost)], Math.Max(0, group.Count() - AtMost)))];
    }

    /// <summary>In the order in which they come; what can be asked at any time is not among them.</summary>
    private static List<string> CoversOf(Telling telling) => telling.Job.Method is not { } method ? [] : [.. method.Layers
        .GroupBy(layer => telling.Phrases.Of(layer.Cover))
        .OrderBy(group => group.Min(layer => layer.Hidden is { } hidden ? method.IndexOf(hidden) : int.MaxValue))
        .ThenBy(group => group.Min(layer => method.IndexOf(layer.Made)))
        .Select(group => group.Key)];
}

/// <param name="Cover">"before the boards"; empty: at any time.</param>
/// <param name="More">How many are left out.</param>
internal sealed record SeeGroup(string Cover, IReadOnlyList<SeeLine> Lines, int More);
