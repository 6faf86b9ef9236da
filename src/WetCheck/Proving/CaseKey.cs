using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Proving;

/// <summary>What case files call parts and facts.</summary>
internal static class CaseKey
{
    /// <summary>
    /// By place, <c>left-back</c> or <c>BC</c>; a member <c>left 2</c>; the unnamed rest <c>other</c>; a part without a
    /// place by its kind.
    /// </summary>
    public static RuleAnswer? Find(string key, IReadOnlyList<RuleAnswer> answers)
    {
        var plain = Plain(key);
        return answers.FirstOrDefault(answer => Names(answer.Part).Any(name => Plain(name) == plain))
            ?? (answers.Where(answer => answer.Part.Place is { } place && Plain(place.Name) == plain).ToList() is [var only] ? only : null);
    }

    public static string Of(Part part) => Names(part).First();

    /// <summary><c>code.plumbing</c>, <c>method</c>, <c>nail presence</c>, <c>nail whole</c>, <c>curb.height</c>.</summary>
    public static string Of(FactId id)
    {
        const string Code = " code";
        var kind = id.Part.Split('/')[0];
        return id == FactId.Method ? "method"
            : kind == "job" && id.Reading.EndsWith(Code, StringComparison.Ordinal) ? "code." + id.Reading[..^Code.Length]
            : id.Reading == FactId.Presence ? kind + " presence"
            : id.Reading == FactId.Whole ? kind + " whole"
            : $"{kind}.{id.Reading}";
    }

    private static IEnumerable<string> Names(Part part)
    {
        var places = part.Place is { } place ? new[] { place.Name, place.Letters }.Where(name => name.Length > 0) : [];
        var ending = part.IsOther ? "other" : part.Index?.ToString(CultureInfo.InvariantCulture);
        return (part.Place, ending) switch
        {
            (null, null) => [part.Kind.Name],
            (null, _) => [ending, $"{part.Kind.Name} {ending}"],
            (_, null) => places,
            _ => places.Select(name => $"{name} {ending}"),
        };
    }

    private static string Plain(string name) => name.Replace('-', ' ').Replace('_', ' ').ToLowerInvariant();
}
