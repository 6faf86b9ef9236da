using WetCheck.Proving;

namespace WetCheck.Tests.Reporting.Owner;

/// <summary>Row 14: an owner can read it. Grade 7 at most, for each rule's own text and for each page.</summary>
public sealed class OwnerReading
{
    private const double Most = 7;

    private static readonly ReadingGrade s_grade = new(TheBook.Book);

    [Theory]
    [InlineData("water", 2)]
    [InlineData("fixed", 1)]
    [InlineData("covered", 2)]
    [InlineData("before", 2)]
    [InlineData("the", 1)]
    [InlineData("electrician", 4)]
    [InlineData("little", 2)]
    [InlineData("waterproof", 3)]
    public void Syllables_are_counted_as_they_are_heard(string word, int heard) =>
        ReadingGrade.Syllables(word).Should().BeInRange(heard - 1, heard + 1);

    /// <summary>A text that nobody would hand an owner is well over the mark.</summary>
    [Fact]
    public void A_hard_text_is_told_from_a_plain_one()
    {
        s_grade.Of("Verification of the termination elevation of the waterproofing assembly is recommended prior to "
            + "the installation of subsequent materials.").Should().BeGreaterThan(14);
        s_grade.Of("Water stays on it. Can we look at it once more?").Should().BeLessThan(3);
    }

    [Fact]
    public void Every_item_and_every_page_of_every_example_is_plain()
    {
        foreach (var (name, walk) in Walks.Examples)
        {
            var page = OwnerPages.Keep(walk, "en");
            s_grade.Of(page).Should().BeLessThanOrEqualTo(Most, name);
            // Up to the next heading.
            foreach (var item in page.Split("\n- ").Select(item => item.Split("\n\n#")[0]))
            {
                // A line of a caution or a code, a few words long, is no text to be graded.
                (s_grade.Of(item) > Most && item.Split(' ').Length > 12).Should().BeFalse($"{name}: {item}");
            }
        }
    }
}
