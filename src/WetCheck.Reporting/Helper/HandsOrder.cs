using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>
/// What a helper does today, after that, and what he leaves alone. Today's are the first five of the list: Stops, then the
/// nearest cover. They stand in the order the hands go: layers of the method from the bottom up, for what lies under is mended
/// first; what belongs to no layer before them; within a layer as one walks.
/// </summary>
internal sealed record HandsOrder(IReadOnlyList<Entry> Today, IReadOnlyList<Entry> After, IReadOnlyList<Entry> NotYours)
{
    /// <summary>As many as a head keeps.</summary>
    public const int AtOnce = 5;

    private const string Setter = "setter";

    public static HandsOrder Of(Walk walk)
    {
        var own = walk.ToFix.Where(entry => entry.Rule.WorkOf == Setter).OrderBy(entry => entry.Severity != Severity.Stop).ToList();
        return new HandsOrder(
            AsHandsGo(own.Take(AtOnce), walk),
            AsHandsGo(own.Skip(AtOnce), walk),
            [.. walk.ToFix.Where(entry => entry.Rule.WorkOf != Setter)]);
    }

    /// <summary>All Stops, so that the top can name them wherever they stand.</summary>
    public IEnumerable<Entry> Stops => Today.Concat(After).Concat(NotYours).Where(entry => entry.Severity == Severity.Stop);

    private static IReadOnlyList<Entry> AsHandsGo(IEnumerable<Entry> entries, Walk walk) =>
        [.. entries.OrderBy(entry => LayerOf(entry, walk)).ThenBy(entry => entry.Worst.Part.Kind.Order)];

    /// <summary>-1 for what belongs to no layer.</summary>
    private static int LayerOf(Entry entry, Walk walk)
    {
        var test = Evidence.Of(entry.Worst).Test;
        var layer = test?.Fact?.Kind.LayerOf(test.Of.Place);
        return (walk.Job.Method?.Layers ?? []).Select(one => one.Name).ToList().FindIndex(name => name == layer);
    }
}
