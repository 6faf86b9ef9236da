using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The limits of one rule in one world; all in force hold together.</summary>
/// <param name="Limit">The least and the most of them; null: none is in force.</param>
/// <param name="Codes">Families that they are asked of.</param>
internal sealed record InForce((Quantity Min, Quantity Max)? Limit, IReadOnlyList<string> Codes, IReadOnlyList<string> Rows)
{
    /// <param name="judged">How the least fall is read; null or empty: not said.</param>
    public static InForce Of(Rule? rule, FallWorld world, string? judged)
    {
        var versions =
            (rule?.Versions ?? [])
            .Where(version => version.Limit is not null && Holds(rule!.When, world, judged)
            && Holds(version.When, world, judged)).ToList();
        if (versions.Count == 0)
        {
            return new InForce(null, [], []);
        }

        var limits = versions.Select(version => version.Limit!.Value).OrderBy(limit => limit.Value).ToList();
        var codes = versions.SelectMany(version => version.When?.Parts() ?? []).OfType<Condition.CodeIs>()
            .Where(test => Holds(test, world, judged)).Select(test => world.Codes[test.Discipline].Family).Distinct();
        return new InForce((limits[0], limits[^1]), [.. codes], [.. versions.SelectMany(version => version.Rows).Distinct()]);
    }

    /// <summary>What is neither a code nor an answer is taken to hold: no version of these rules hangs on it.</summary>
    private static bool Holds(Condition? condition, FallWorld world, string? judged) => condition switch
    {
        Condition.All all => all.Of.All(one => Holds(one, world, judged)),
        Condition.AnyOf any => any.Of.Any(one => Holds(one, world, judged)),
        Condition.CodeIs test => world.Codes.TryGetValue(test.Discipline, out var code) && test.OneOf.Any(range => range.Touches(code)),
        Condition.Is test => test.OneOf.Contains((test.Path.Reading.Name == "judged" ? judged : world.AnswerTo(test.Path.Reading)) ?? ""),
        _ => true,
    };
}
