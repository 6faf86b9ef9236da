using System.Globalization;
using System.Text.RegularExpressions;
using WetCheck.Model;

namespace WetCheck.Proving;

/// <summary>An owner's words of a rule: seven years of school, the work and not a person, no word with two meanings.</summary>
internal sealed partial class OwnerPlainness(RuleBook book)
{
    public const double GradeAtMost = 7;

    private readonly ReadingGrade _grade = new(book);

    public IEnumerable<string> Faults(Rule rule)
    {
        foreach (var (language, texts) in rule.Texts)
        {
            var said = $"{texts.Seen} {texts.Ask} {texts.Good} {texts.See}";
            foreach (var word in Unwanted(language, said).Concat(OnPaper().Matches(said).Select(match => match.Value)))
            {
                yield return $"{language}: the owner reads \"{word}\", which speaks of a person, blames, or has two "
                    + $"meanings: write it otherwise";
            }
        }

        foreach (var (item, grade) in Items(rule.Texts["en"]).Select(item => (item, _grade.Of(item))).Where(one => one.Item2 > GradeAtMost))
        {
            yield return string.Create(
                CultureInfo.InvariantCulture, $"en: the owner's words ask {grade:0.0} years of school, {GradeAtMost} at most: {item}");
        }
    }

    /// <summary>Words that no text for an owner has, in either language.</summary>
    public static IEnumerable<string> Unwanted(string language, string text) =>
        (language == "es" ? Spanish() : English()).Matches(text).Select(match => match.Value);

    /// <summary>
    /// What stands together on the page: found, question, good answer; or what to see and a good answer. One sentence of three
    /// words would swing a grade by itself, so an item is graded whole.
    /// </summary>
    private static IEnumerable<string> Items(RuleTexts texts) => texts.Seen.Length == 0 ? []
        : [$"{texts.Seen} {texts.Ask} {texts.Good}", $"{(texts.See.Length > 0 ? texts.See : texts.Ask)}. {texts.Good}"];

    /// <summary>"Right" only of a side; nobody did, failed, forgot or lied.</summary>
    [GeneratedRegex(
        @"\b(he|she|his|her|him|you did|you failed|forgot(ten)?|careless|sloppy|blame|fault|wrong|bad work|covered up|liar?"
        + @"|right(?! (wall|side)|-back)|correctly|professional(ly)?)\b",
        RegexOptions.IgnoreCase)]
    private static partial Regex English();

    /// <summary>Said by the program of a plan, never of print.</summary>
    [GeneratedRegex(@"\b(on paper|en el papel)\b", RegexOptions.IgnoreCase)]
    private static partial Regex OnPaper();

    [GeneratedRegex(
        @"\b(alto|tapad[oa]s?|tapa|culpa|error|mal hecho|él hizo|usted hizo|olvid[óo]|descuid[oa]d?[oa]?)\b",
        RegexOptions.IgnoreCase)]
    private static partial Regex Spanish();
}
