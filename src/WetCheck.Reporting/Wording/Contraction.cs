namespace WetCheck.Reporting;

/// <summary>Spanish joins "de el" and "a el" where a name that begins with its article is put into a sentence.</summary>
internal static class Contraction
{
    public static string Of(string text) => text.Contains(" el ", StringComparison.Ordinal)
        ? text.Replace(" de el ", " del ", StringComparison.Ordinal).Replace(" a el ", " al ", StringComparison.Ordinal)
        : text;
}
