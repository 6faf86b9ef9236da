using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>
/// Least and most falls out of the rules that hold floors against them. Each code that may apply is tried with each
/// answer that may be given;
/// what comes to the same limits is one.
/// </summary>
internal static class LimitsInForce
{
    private const string Least = "floor/fall-least";
    private const string Most = "floor/fall-most";
    private const string Valley = "floor/valley-fall";

    /// <summary>How the least fall is read decides between the measures, so it is set and not tried.</summary>
    private const string Judged = "judged";

    private const string AlongAnyPath = "along any path";

    public static (IReadOnlyList<PanLimits> Limits, IReadOnlyList<string> Without) Of(RuleBook book, IReadOnlyList<PartState> known)
    {
        if (book.Rule(Least) is not { } least || book.Rule(Most) is not { } most)
        {
            return ([], []);
        }

        var valley = book.Rule(Valley);
        var judged = (known.FirstOrDefault(part => part.Kind == "floor")?.Facts.GetValueOrDefault(Judged)?.OnPaper as Known.OneOf)?.Choice;
        var worlds = FallWorld.All([.. new[] { least, most, valley }.OfType<Rule>()], known, Judged).ToList();
        var found = new List<(FallWorld World, PanLimits Limits)>();
        foreach (var world in worlds)
        {
            var (low, high) = (InForce.Of(least, world, judged), InForce.Of(most, world, judged));
            if (low.Limit is { } from && high.Limit is { } to)
            {
                found.Add((world, Set(from, to.Min, low, high, alongFolds: false, isDisputed: false)));
            }

            var sure = InForce.Of(valley, world, judged ?? "");
            var along = judged is null ? InForce.Of(valley, world, AlongAnyPath) : sure;
            if (along.Limit is { } fold && high.Limit is { } steep)
            {
                found.Add((world, Set(fold, steep.Min, along, high, alongFolds: true, isDisputed: judged is null && sure.Limit is null)));
            }
        }

        // Codes that contradict each other are not in force together.
        var limits =
            found.Where(one => one.Limits.Least.Value <= one.Limits.Most.Value)
            .GroupBy(one => (one.Limits.AlongFolds, one.Limits.Least, one.Limits.Most)).Select(Joined)
            .OrderBy(one => one.AlongFolds).ThenByDescending(one => one.Least.Value.Approximate / one.Most.Value.Approximate).ToList();
        var told = found.SelectMany(one => one.Limits.Codes).ToHashSet();
        var without =
            worlds.Where(world => found.TrueForAll(one => one.World != world)).SelectMany(world => world.Families)
            .Distinct().Where(family => !told.Contains(family));
        return (limits, [.. without]);

        static PanLimits Set((Quantity Min, Quantity Max) lowest, Quantity highest, InForce low, InForce high,
            bool alongFolds, bool isDisputed) =>
            new(lowest.Max, highest, alongFolds, isDisputed, low.Codes, [], [.. low.Rows.Union(high.Rows)]);
    }

    /// <summary>Answers are named where not all of them come to the same.</summary>
    private static PanLimits Joined(IEnumerable<(FallWorld World, PanLimits Limits)> alike)
    {
        var all = alike.ToList();
        var held = all[0]
            .World.Answers.Keys.Where(reading =>
            reading.Choices.Any(choice => all.TrueForAll(one => one.World.Answers[reading] != choice)))
            .SelectMany(reading => all.Select(one => one.World.Answers[reading])).Distinct();
        return all[0].Limits with
        {
            Codes = [.. all.SelectMany(one => one.Limits.Codes).Distinct()],
            Disputed = all.Exists(one => one.Limits.Disputed),
            Held = [.. held],
            Rows = [.. all.SelectMany(one => one.Limits.Rows).Distinct()],
        };
    }
}
