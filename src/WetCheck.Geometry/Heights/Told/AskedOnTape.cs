using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>What rules ask of heights over a level that isn't built yet, moved to one that is: "3 in above the rough curb".</summary>
internal static class AskedOnTape
{
    private static readonly (string Key, string Rule, string From)[] s_asked =
    [
        ("turn-up", "liner/turn-up", "rough curb"),
        ("nail-water", "liner/nail-under-water", "rough curb"),
        ("nail", "liner/nail-one-inch", "rough curb"),
    ];

    public static IEnumerable<HeightAsked> Of(RuleBook book, IReadOnlyList<PartState> known, Standing told) =>
        from asked in s_asked
        let rule = book.Rule(asked.Rule)
        where rule is not null && told.IsHere(rule.Part.Name)
        from one in Of(asked.Key, asked.From, rule, known, told)
        select one;

    private static IEnumerable<HeightAsked> Of(string key, string from, Rule rule, IReadOnlyList<PartState> known, Standing told)
    {
        if ((rule.Body as RuleBody.Require)?.Holds?.Parts().OfType<Condition.Compare>().FirstOrDefault() is not { To.Datum: { } datum } test
            || told.Between(from, datum) is not { } between)
        {
            yield break;
        }

        if (test.To is Operand.Fixed { Quantity: var number })
        {
            yield return Moved(number, [], rule.Rows);
            yield break;
        }

        var worlds = FallWorld.All([rule], known, "").Select(world => InForce.Of(rule, world, null)).Where(one => one.Limit is not null);
        foreach (var alike in worlds.GroupBy(one => one.Limit!.Value.Max))
        {
            yield return Moved(alike.Key, [.. alike.SelectMany(one => one.Codes).Distinct()],
                [.. alike.SelectMany(one => one.Rows).Distinct()]);
        }

        HeightAsked Moved(Quantity limit, IReadOnlyList<string> codes, IReadOnlyList<string> rows) =>
            new(key, from, between with { Is = between.Is + Spread.Exactly(limit.Value) }, limit, datum, codes, rows);
    }
}
