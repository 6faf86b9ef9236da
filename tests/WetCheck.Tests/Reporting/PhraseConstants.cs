using System.Reflection;
using System.Text.RegularExpressions;
using WetCheck.Reporting;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Reporting;

/// <summary>
/// A key of the words that is fixed stands in the code as a constant made from the words, so that none is misspelt.
/// Keys made of two parts are found by the lists.
/// </summary>
public sealed partial class PhraseConstants
{
    [Fact]
    public void The_constants_are_the_keys_of_the_english_words() =>
        Constants(typeof(Phrase)).Should().BeEquivalentTo(TheBook.Book.Words["en"].Keys);

    [Fact]
    public void No_key_stands_in_the_lists_as_a_text() =>
        Repository.LinesWhere(Repository.In("src/WetCheck.Reporting/", ".cs"),
            line => Texts().Matches(line).Any(text => TheBook.Book.Words["en"].ContainsKey(text.Groups[1].Value)))
            .Should().BeEmpty("Phrase has it");

    private static IEnumerable<string> Constants(Type section) =>
        section.GetFields(BindingFlags.Public | BindingFlags.Static).Select(field => (string)field.GetRawConstantValue()!)
            .Concat(section.GetNestedTypes().SelectMany(Constants));

    [GeneratedRegex("\"([^\"{}]+)\"")]
    private static partial Regex Texts();
}
