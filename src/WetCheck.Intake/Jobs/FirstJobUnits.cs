using System.Text.RegularExpressions;
using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Which units a job is in, by what was answered before its file was there.</summary>
internal static partial class FirstJobUnits
{
    public static bool SaysMetric(string size) => Metric().IsMatch(size);

    /// <summary>All of the codes stated are of places that build in millimetres.</summary>
    public static bool AreMetric(IReadOnlyDictionary<string, StatedCode> codes, Vocabulary vocabulary)
    {
        var families =
            codes.Select(code => vocabulary.Discipline(code.Key)
            ?.Families.FirstOrDefault(family => family.Name == code.Value.Family)).OfType<CodeFamily>().ToList();
        return families.Count > 0 && families.TrueForAll(family => family.TriedInMillimetres && !family.TriedInInches);
    }

    [GeneratedRegex(@"[0-9]\s*(mm|cm|m)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Metric();
}
