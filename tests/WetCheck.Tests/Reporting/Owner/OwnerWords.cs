using System.Text.RegularExpressions;

namespace WetCheck.Tests.Reporting.Owner;

/// <summary>Rows 14 and 16: the work is spoken of, not a person, and no word has two meanings.</summary>
public sealed partial class OwnerWords
{
    [Fact]
    public void No_owner_text_speaks_of_a_person_or_has_a_word_with_two_meanings()
    {
        foreach (var rule in TheBook.Book.Rules)
        {
            English().Matches(Text(rule.Texts["en"])).Select(match => match.Value).Should().BeEmpty(rule.Id);
            Spanish().Matches(Text(rule.Texts["es"])).Select(match => match.Value).Should().BeEmpty(rule.Id);
        }
    }

    [Fact]
    public void No_page_does()
    {
        foreach (var (name, walk) in Walks.All)
        {
            English().Matches(OwnerPages.Keep(walk, "en")).Select(match => match.Value).Should().BeEmpty(name);
            Spanish().Matches(OwnerPages.Keep(walk, "es")).Select(match => match.Value).Should().BeEmpty(name);
        }
    }

    /// <summary>"On paper" is said of a plan, never of print: no rule's own text has it.</summary>
    [Fact]
    public void On_paper_is_never_printed() => TheBook.Book.Rules
        .Where(rule => Text(rule.Texts["en"]).Contains("on paper", StringComparison.OrdinalIgnoreCase) || Text(rule.Texts["es"]).Contains("en el papel", StringComparison.OrdinalIgnoreCase))
        .Select(rule => rule.Id).Should().BeEmpty();

    private static string Text(Model.RuleTexts texts) => $"{texts.Seen} {texts.Ask} {texts.Good} {texts.See}";

    /// <summary>"Right" only of a side; nobody did, failed, forgot or lied.</summary>
    [GeneratedRegex(@"\b(he|she|his|her|him|you did|you failed|forgot(ten)?|careless|sloppy|blame|fault|wrong|bad work|covered up|liar?|right(?! (wall|side)|-back)|correctly|professional(ly)?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex English();

    [GeneratedRegex(@"\b(alto|tapad[oa]s?|tapa|culpa|error|mal hecho|él hizo|usted hizo|olvid[óo]|descuid[oa]d?[oa]?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Spanish();
}
