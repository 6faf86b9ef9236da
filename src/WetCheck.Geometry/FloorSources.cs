using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>What a number of a floor with one drain is worked out from.</summary>
internal static class FloorSources
{
    /// <param name="first">What was read of the floor itself: its rim, its levels.</param>
    /// <param name="more">What the number wants beside.</param>
    /// <returns>In this order: first, drain's place, form, grate, grate's shape, size or outline, more. Null where one
    /// is not told: of readings that are
    /// not there nothing is asked, they are one way of several. With two drains the planes are others.</returns>
    public static IReadOnlyList<Fact>? Of(JobFacts facts, Fact? first, params IEnumerable<Fact?> more)
    {
        Fact?[] sources =
        [
            first, facts.Of("shower", "drain at"), facts.Of("drain", "form"), facts.Of("drain", "grate"), facts.Of("drain", "grate shape"),
            facts.Of("shower", "size") is { IsBlank: false } size ? size : facts.Of("shower", "outline"), .. more,
        ];
        return facts.Of("shower", "second drain at") is { IsBlank: false }
            || sources.Any(source => source is null || source.IsBlank) ? null : [.. sources.OfType<Fact>()];
    }
}
