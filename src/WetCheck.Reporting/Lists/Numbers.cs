namespace WetCheck.Reporting;

/// <summary>Numbers of entries in a row, the rest counted.</summary>
internal static class Numbers
{
    private const int AtMost = 8;

    public static string Few(IReadOnlyList<string> numbers, Phrases phrases) => numbers.Count <= AtMost
        ? string.Join(", ", numbers)
        : $"{string.Join(", ", numbers.Take(AtMost))} {phrases.Count(Phrase.Say.More, numbers.Count - AtMost)}";
}
