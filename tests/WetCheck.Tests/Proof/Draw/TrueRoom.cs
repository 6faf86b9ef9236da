using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>One true state of a room. Whatever is told of it can all be true at once.</summary>
/// <param name="Metric">How it is measured.</param>
/// <param name="Levels">Of every datum, in inches above the liner at the drain.</param>
internal sealed record TrueRoom(
    Method Method,
    string Stage,
    bool Metric,
    IReadOnlyDictionary<string, CodeRange> Codes,
    IReadOnlyDictionary<string, Rational> Levels,
    IReadOnlyList<TruePart> Parts)
{
    public IEnumerable<TruePart> Of(string kind) => Parts.Where(part => part.Kind.Name == kind);

    public bool Has(string kind) => Of(kind).Any(part => part.Present);
}

/// <summary>A part as it truly is. Of a list only members are here, and all of them.</summary>
internal sealed record TruePart(PartKind Kind, Place? Place, bool Present, IReadOnlyDictionary<string, TrueValue> Values);
