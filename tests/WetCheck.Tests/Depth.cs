namespace WetCheck.Tests;

/// <summary>
/// How much is tried: WETCHECK_DEPTH=daily, which is what stands when nothing is said; deep before a change is taken; night, as
/// much as a night gives. One switch, every kind of proof in each.
/// </summary>
internal static class Depth
{
    private static readonly string Said = Environment.GetEnvironmentVariable("WETCHECK_DEPTH") is { Length: > 0 } said ? said : "daily";

    /// <summary>Jobs drawn for a proof that is made on many.</summary>
    public static int Jobs { get; } = Of(daily: 24, deep: 200, night: 2000);

    public static bool IsDaily => Said == "daily";

    public static int Of(int daily, int deep, int night) => Said switch
    {
        "daily" => daily,
        "deep" => deep,
        "night" => night,
        _ => throw new InvalidOperationException($"WETCHECK_DEPTH is {Said}; it may be daily, deep or night"),
    };

    /// <summary>One of so many at daily depth, the first among them; all of them deeper.</summary>
    public static IEnumerable<T> OneOf<T>(int each, IEnumerable<T> all) => IsDaily ? all.Where((_, at) => at % each == 0) : all;
}
