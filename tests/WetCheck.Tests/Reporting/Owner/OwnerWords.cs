using WetCheck.Proving;

namespace WetCheck.Tests.Reporting.Owner;

/// <summary>Rows 14 and 16: the work is spoken of, not a person, and no word has two meanings.</summary>
public sealed class OwnerWords
{
    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void No_page_speaks_of_a_person_or_has_a_word_with_two_meanings(string language)
    {
        foreach (var (name, walk) in Walks.All)
        {
            OwnerPlainness.Unwanted(language, OwnerPages.Keep(walk, language)).Should().BeEmpty(name);
        }
    }
}
