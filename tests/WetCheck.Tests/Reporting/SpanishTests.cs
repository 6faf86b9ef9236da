using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting;

/// <summary>The Spanish lists: nothing in them falls back to English without a word.</summary>
public sealed class SpanishTests
{
    [Fact]
    public void Spanish_has_every_word_of_the_lists() =>
        TheBook.Book.Words["en"].Keys.Except(TheBook.Book.Words["es"].Keys).Should().BeEmpty();

    [Fact]
    public void Every_word_of_the_vocabulary_has_its_Spanish()
    {
        var words = TheBook.Book.Vocabulary;
        var said = words.Kinds.SelectMany(kind => new[] { kind.One, kind.Several, kind.AskPresence, kind.AskWhole, kind.Gloss })
            .Concat(words.Kinds.SelectMany(kind => kind.Readings).Where(reading => !reading.Derived)
                .SelectMany(reading => new[] { reading.Ask, reading.How, reading.Gloss, reading.Proof }))
            .Concat(words.Kinds.SelectMany(kind => kind.Readings).SelectMany(reading => reading.Choices).Select(choice => choice.Say))
            .Concat(words.Places.Select(place => place.Say))
            .Concat(words.Datums.Select(datum => datum.Say))
            .Concat(words.Methods.SelectMany(method => method.Stops.Select(stop => stop.Say)
                .Concat(method.Layers.Select(layer => layer.Cover)).Prepend(method.Say)))
            .Concat(words.Disciplines.SelectMany(discipline => new[] { discipline.Say, discipline.Ask }));
        said.Where(word => word.En.Any(char.IsLower) && word.Es is null or "").Select(word => word.En).Distinct().Should().BeEmpty();
    }

    [Fact]
    public void Every_Spanish_list_says_that_it_is_a_draft()
    {
        foreach (var (name, walk) in Walks.Examples)
        {
            foreach (var form in new[] { PunchPage.Html(walk, "es", ""), PunchPage.Markdown(walk, "es", ""),
                PunchPage.Message(walk, "es", "") })
            {
                form.Should().Contain("Borrador", name);
            }
        }
    }

    [Fact]
    public void A_Spanish_list_has_the_numbers_of_the_English_one_in_the_same_order()
    {
        foreach (var (name, walk) in Walks.All)
        {
            var (english, spanish) = (Listing.Of(walk, "en", ""), Listing.Of(walk, "es", ""));
            Numbers(spanish).Should().Equal(Numbers(english), name);
            spanish.Tally.Should().Be(english.Tally, name);
        }
    }

    [Fact]
    public void A_rule_without_Spanish_is_named_at_the_top()
    {
        var walk = Walks.Example("juniper");
        var entries = walk.Entries.Select(entry => entry.Rule.Number == 208
            ? entry with { Rule = entry.Rule with { Texts = new Dictionary<string, RuleTexts> { ["en"] = entry.Rule.Texts["en"] } } }
            : entry);
        Listing.Of(walk with { Entries = [.. entries] }, "es", "").Heading.Warnings.Should().Equal("Reglas que solo están en inglés: 208.");
        Listing.Of(walk, "es", "").Heading.Warnings.Should().BeEmpty();
    }

    [Fact]
    public void Both_languages_stand_on_one_page_each_in_its_own()
    {
        var page = PunchPage.Html(Walks.Example("juniper"), "both", "");
        page.Should().Contain("<main lang=\"en\">").And.Contain("<main lang=\"es\">").And.Contain("NOT READY").And.Contain(" LISTO para ");
        PunchPage.Html(Walks.Example("juniper"), "es", "").Should().Contain("<html lang=\"es\">").And.NotContain("lang=\"en\"");
    }

    private static IEnumerable<string> Numbers(Listing list) => list.Groups.SelectMany(group => group.Items.Select(item => item.Number))
        .Concat(list.Looks.Select(look => look.Number))
        .Concat(new[] { list.Hidden, list.Hold, list.Cautions, list.Notes }.SelectMany(lines => lines.Select(line => line.Number)));
}
