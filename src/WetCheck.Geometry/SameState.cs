using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>Whether two states of a part say the same, so that nothing need be revised.</summary>
internal static class SameState
{
    public static bool Of(PartState a, PartState b) => a.Exists == b.Exists && a.Presence == b.Presence
        && a.Facts.Count == b.Facts.Count
        && a.Facts.All(pair => b.Facts.TryGetValue(pair.Key, out var other) && Same(pair.Value, other))
        && Same(a.Surroundings, b.Surroundings);

    private static bool Same(Fact? a, Fact? b) => (a, b) switch
    {
        (null, null) => true,
        (null, _) or (_, null) => false,
        _ => a with { From = b.From, Also = b.Also } == b && Same(a.Also, b.Also) && a.From.Count == b.From.Count
            && a.From.Zip(b.From, Same).All(same => same),
    };

    private static bool Same(Surroundings? a, Surroundings? b) => (a, b) switch
    {
        (null, null) => true,
        (null, _) or (_, null) => false,
        _ => a.Methods.SequenceEqual(b.Methods) && SameCodes(a, b) && SameLevels(a.Levels, b.Levels),
    };

    private static bool SameCodes(Surroundings a, Surroundings b) => a.Codes.All(pair =>
        b.Codes.TryGetValue(pair.Key, out var other) && pair.Value.Stated == other.Stated && pair.Value.Tried.SequenceEqual(other.Tried));

    private static bool SameLevels(Levels a, Levels b) => a.Steps.Count == b.Steps.Count
        && a.Steps.Zip(b.Steps, (one, other) => one with { Fact = other.Fact } == other && Same(one.Fact, other.Fact)).All(same => same)
        && a.Owners.All(pair => b.Owners.TryGetValue(pair.Key, out var other) && pair.Value.Part == other.Part
            && pair.Value.Exists == other.Exists);
}
