using WetCheck.Intake;
using WetCheck.Reporting;

namespace WetCheck.Asking;

/// <summary>Words of an answer in another language, for those that a job file has: <c>todos</c> is <c>all</c>.</summary>
internal static class TypedWords
{
    private static readonly string[] s_words = ["all", "some", "rest", "none", "hidden", "yes", "again", "above", "below", "over"];

    public static string InEnglish(string typed, Phrases phrases) => phrases.Language == Languages.English
        ? typed
        : string.Join(' ',
            typed.Split(' ')
            .Select(word =>
            s_words.FirstOrDefault(known => Same(phrases["typed." + known], word.TrimEnd(','))) is { } english
            ? english + word[word.TrimEnd(',').Length..]
            : word));

    /// <summary>With its accent or without.</summary>
    private static bool Same(string known, string typed) =>
        Names.Same(known, typed) || Names.Same(known.Replace('í', 'i').Replace('ú', 'u'), typed);
}
