using System.Text.RegularExpressions;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Proving;

/// <summary>
/// How many years of school an English text asks: 0.39 x words a sentence + 11.8 x syllables a word - 15.59
/// (the formula from memory). Numbers, codes and words of the trade are left out.
/// </summary>
internal sealed partial class ReadingGrade(RuleBook book)
{
    private readonly Glossary _glossary = Glossary.Of(book, new Phrases(book, "en"), null);

    public double Of(string text)
    {
        var plain = Slot().Replace(_glossary.Word.Replace(text, " "), " ");
        var words = Token().Matches(plain).Select(match => match.Value).Where(IsWord)
            .SelectMany(word => word.Split('-', '/')).Where(word => word.Length > 0).ToList();
        var sentences = Math.Max(1, SentenceEnd().Count(plain));
        return (0.39 * words.Count / sentences) + (11.8 * words.Sum(Syllables) / Math.Max(1, words.Count)) - 15.59;
    }

    /// <summary>Groups of vowels, without an end that is not heard.</summary>
    public static int Syllables(string word)
    {
        var heard = Silent().Replace(word.ToLowerInvariant(), match => match.Value[..1]);
        return Math.Max(1, Vowels().Count(word.Length <= 3 ? word.ToLowerInvariant() : heard));
    }

    /// <summary>Not a figure or a number of an entry, and not in capitals: those are codes, headings and explained words.</summary>
    private static bool IsWord(string token) => !token.Any(char.IsAsciiDigit) && (token.Length == 1 || token.Any(char.IsAsciiLetterLower));

    [GeneratedRegex(@"\{[a-z]+\}")]
    private static partial Regex Slot();

    [GeneratedRegex("[A-Za-z0-9][A-Za-z0-9'/-]*")]
    private static partial Regex Token();

    [GeneratedRegex("""[.?!](?=["'*)]*(\s|$))""")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex("[^laeiouy]es$|[^td]ed$|[^laeiouy]e$|'[a-z]+$")]
    private static partial Regex Silent();

    [GeneratedRegex("[aeiouy]+")]
    private static partial Regex Vowels();
}
