using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>One entry for one thing to fix: same rule, same place; and a rule that yields stands under the one it yields to.</summary>
internal static class Folding
{
    public static IReadOnlyList<Entry> Of(Job job, IReadOnlyList<Check> checks)
    {
        var entries = checks
            .GroupBy(check => (check.Rule, Letters: check.Part.Place?.Letters ?? ""))
            .Select(group => new Entry(Number(group.Key.Rule, group.Key.Letters), group.Key.Rule, group.Key.Letters,
                [.. group.OrderBy(Rank).ThenBy(Slack)], []))
            .ToList();
        foreach (var entry in entries.Where(entry => entry.Rule.YieldsTo is not null && entry.Result == Result.Correction).ToList())
        {
            var failing = entry.Checks.Where(check => check.Result == Result.Correction).ToList();
            var over = entries.FindIndex(other => other.Rule.Id == entry.Rule.YieldsTo && other.Letters == entry.Letters
                && failing.All(check => other.Checks.Any(one => one.Part == check.Part && one.Result == Result.Correction)));
            if (over >= 0)
            {
                entries[over] = entries[over] with { Also = [.. entries[over].Also, entry] };
                entries.Remove(entry);
            }
        }

        return [.. entries.OrderBy(entry => Rank(entry.Worst)).ThenBy(entry => entry.Result == Result.Correction ? entry.Severity : 0)
            .ThenBy(entry => entry.Result == Result.Correction ? Cover.Of(job, entry.Worst) : 0)
            .ThenBy(entry => entry.Rule.Number)
            .ThenBy(entry => entry.Letters, StringComparer.Ordinal)];
    }

    /// <summary>Rule and place: <c>214-D</c>.</summary>
    public static string Number(Rule rule, string letters) => string.Create(System.Globalization.CultureInfo.InvariantCulture,
        $"{rule.Number}{(letters.Length == 0 ? "" : "-")}{letters}");

    /// <summary>Worst first. A Correction on paper stands with the others: it is a Correction.</summary>
    private static int Rank(Check check) => check.Result switch
    {
        Result.Correction => 0,
        Result.ReadAgain => 1,
        Result.ToCheck => check.Paper == Paper.Short ? 2 : 3,
        Result.HiddenNow => 4,
        Result.Later => 5,
        Result.Ok => 6,
        _ => 7,
    };

    private static Rational Slack(Check check) => check.Sides.SelectMany(side => side.Tests)
        .Select(test => test.Slack.AsRead.Hi ?? test.Slack.AsRead.Lo ?? 0)
        .DefaultIfEmpty(0)
        .Min();
}
