using System.Text.RegularExpressions;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting.Owner;

/// <summary>Row 14: each word of the trade has its meaning where it is used first, once.</summary>
public sealed class OwnerGlossary
{
    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void Every_word_has_a_meaning_that_needs_no_other(string language)
    {
        var glossary = Of(language);
        foreach (var form in glossary.Forms)
        {
            glossary.Meaning(form).Should().NotBeEmpty(form);
            glossary.Word.Matches(glossary.Meaning(form)).Select(match => match.Value).Should().BeEmpty(form);
        }
    }

    [Fact]
    public void The_first_use_is_explained_the_second_is_not()
    {
        var first = new FirstUse(Of("en"));
        first.In("The weep holes are blocked.").Should()
            .Be("The WEEP HOLES (small holes in the drain that let out the water from under the tile) are blocked.");
        first.In("A weep hole lets water out.").Should().Be("A weep hole lets water out.");
        first.In("The curb's top.").Should().Be("The CURB's (the step you walk over) top.");
        first.In("A curbless one, a cardboard box.").Should().Be("A curbless one, a cardboard box.");
    }

    [Fact]
    public void What_is_said_aloud_stays_whole_and_is_explained_after_it()
    {
        var first = new FirstUse(Of("en"));
        first.InSpeech("Where does the board end?").Should().Be(("Where does the BOARD end?", " (BOARD: what the tile sticks to)"));
        first.InSpeech("Where does the board end?").Should().Be(("Where does the board end?", ""));
    }

    /// <summary>In Spanish one word stands for the liner and for a membrane: the method tells which.</summary>
    [Theory]
    [InlineData("liner under mortar", "la lámina impermeable debajo del mortero")]
    [InlineData("curbless bonded", "la capa impermeable debajo del azulejo")]
    public void A_word_for_two_things_means_the_one_that_the_method_has(string method, string meaning) =>
        Glossary.Of(TheBook.Book, new Phrases(TheBook.Book, "es"), TheBook.Book.Vocabulary.Method(method))
            .Meaning("membrana").Should().Be(meaning);

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void On_every_page_each_word_is_explained_at_its_first_use_and_once(string language)
    {
        foreach (var (name, walk) in Walks.All)
        {
            var glossary = Glossary.Of(walk.Book, new Phrases(walk.Book, language), walk.Job.Method);

            // Headings, the job's own name and the codes are no running text.
            var page = OwnerPages.Keep(walk, language);
            var text = string.Join('\n',
                page[..page.IndexOf(TheBook.Book.Words[language]["owner.person"], StringComparison.Ordinal)].Split('\n')
                .Skip(1).Where(line => !line.StartsWith("## ", StringComparison.Ordinal)));
            var used = glossary.Word.Matches(text).ToLookup(match => glossary.Meaning(match.Groups["form"].Value));
            foreach (var meaning in glossary.Forms.Select(glossary.Meaning).Distinct())
            {
                var uses = used[meaning].ToList();
                var explained = Regex.Count(text, Regex.Escape(meaning) + @"[);]");
                explained.Should().Be(uses.Count == 0 ? 0 : 1, $"{name}: {meaning}");
                foreach (var use in uses.Take(1))
                {
                    use.Groups["form"].Value.Any(char.IsLower).Should().BeFalse($"{name}: {use.Value}");
                    text[use.Index..Math.Min(text.Length, use.Index + 300)].Should().Contain(meaning, $"{name}: {use.Value}");
                }
            }
        }
    }

    private static Glossary Of(string language) => Glossary.Of(TheBook.Book, new Phrases(TheBook.Book, language), null);
}
