using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>When what a check speaks of is hidden.</summary>
internal static class Cover
{
    /// <summary>Index of the stop at which the next cover hides it; past the last one where nothing does.</summary>
    public static int Of(Job job, Check check) => check.Sides.SelectMany(side => side.Tests)
        .Select(test => test.Fact)
        .OfType<Fact>()
        .Select(fact => Of(job, LayerOf(fact, check.Part)))
        .DefaultIfEmpty(int.MaxValue)
        .Min();

    public static int Of(Job job, string? layer) =>
        job.Method is { } method && method.Layers.FirstOrDefault(one => one.Name == layer) is { Hidden: { } hidden }
            ? method.IndexOf(hidden) : int.MaxValue;

    /// <summary>It can be seen at this stop and not at the next.</summary>
    public static bool IsNext(Job job, string? layer) =>
        job is { Method: { } method, Stage: { } stage } && Of(job, layer) == method.IndexOf(stage) + 1;

    private static string? LayerOf(Fact fact, Part part) => fact.Kind.LayerOf(part.Place);
}
