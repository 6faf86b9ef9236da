using System.Text;
using System.Text.RegularExpressions;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting;

/// <summary>Row 18, as far as bytes tell it: one file, no script, nothing from outside, black, every value harmless.</summary>
public sealed partial class PageTests
{
    [Fact]
    public void It_stands_alone()
    {
        foreach (var (name, walk) in Walks.All)
        {
            foreach (var page in new[] { Page(walk), PunchPage.Html(walk, "both", Walks.When, Reader.Owner) })
            {
                Encoding.UTF8.GetByteCount(page).Should().BeLessThan(200_000, name);
                Outside().IsMatch(page).Should().BeFalse(name);
                page.Should().NotContain("{{", name).And.NotContain("{found}").And.NotContain("{limit}");
            }
        }
    }

    [Fact]
    public void It_is_black_on_white()
    {
        var colours = Colour().Matches(Page(Walks.Example("juniper"))).Select(match => match.Value).Distinct();
        colours.Should().BeEquivalentTo("#000", "#fff");
    }

    [Fact]
    public void The_verdict_comes_first_then_every_stop_then_the_rest()
    {
        var page = Page(Walks.Example("juniper"));
        var verdict = page.IndexOf("NOT READY for the flood test.", StringComparison.Ordinal);
        var stop = page.IndexOf("""<section class="stop">""", StringComparison.Ordinal);
        var cover = page.IndexOf("""<section class="before-cover">""", StringComparison.Ordinal);
        verdict.Should().BePositive().And.BeLessThan(stop);
        stop.Should().BeLessThan(cover);
    }

    [Fact]
    public void It_has_every_number_the_closing_sentence_the_book_and_the_codes()
    {
        var walk = Walks.Example("juniper");
        var page = Page(walk);
        foreach (var entry in walk.Entries.Where(entry => entry.Result is Result.Correction or Result.ReadAgain or Result.HiddenNow))
        {
            page.Should().Contain($"""<span class="number">{entry.Number}</span>""");
        }

        page.Should().Contain("A record of what was seen and measured.").And.Contain("Rule book: inch and metric")
            .And.Contain("Plumbing code IRC 2021");
    }

    [Fact]
    public void Every_string_of_a_job_and_of_a_book_is_harmless()
    {
        const string Attack = "<b onclick=x>&\"'{{ 1 }}[x](javascript:alert(1))";
        var walk = Walks.Example("juniper");
        var texts = new RuleTexts(Attack, Attack, Attack, Attack, Attack, Attack, Attack, Attack, Attack, Attack, Attack);
        var words = walk.Book.Words["en"]
            .ToDictionary(pair => pair.Key,
            pair => pair.Key.StartsWith("close", StringComparison.Ordinal) ? pair.Value : pair.Value + Attack);
        var sources = walk.Book.Sources.ToDictionary(
            pair => pair.Key,
            pair => (IReadOnlyList<SourceEntry>)[.. pair.Value.Select(entry =>
                entry with { Publisher = Attack, Document = Attack, Section = Attack })]);
        var rules = walk.Entries.Select(entry => entry.Rule).Distinct()
            .ToDictionary(rule => rule,
            rule => rule with { Texts = new Dictionary<string, RuleTexts> { ["en"] = texts } });
        var attacked = walk with
        {
            Job = walk.Job with { Name = Attack },
            Book = walk.Book with
            {
                Name = Attack,
                Words = new Dictionary<string, IReadOnlyDictionary<string, string>> { ["en"] = words },
                Sources = sources,
            },
            Entries = [.. walk.Entries.Select(entry =>
                entry with { Rule = rules[entry.Rule],
                Checks = [.. entry.Checks.Select(check => check with { Rule = rules[entry.Rule] })] })],
        };
        foreach (var page in new[] { Page(attacked), PunchPage.Html(attacked, "en", Walks.When, Reader.Owner) })
        {
            page.Should().NotContain("<b onclick").And.NotContain("href=\"javascript").And.NotContain("<a ");
            Tags().Matches(page).Select(tag => tag.Groups[1].Value).Distinct().Should().OnlyContain(tag => Known.Contains(tag));
        }
    }

    [Fact]
    public void A_rule_may_link_to_a_plain_address_only()
    {
        RichText.Html("see [the sheet](https://example.org/a)").Should().Contain("href=\"https://example.org/a\"");
        foreach (var attack in new[] { "[x](javascript:alert(1))", "<javascript:alert(1)>",
            "![x](https://example.org/a.png)", "[x](data:text/html,x)", "[x](//example.org)",
            "<script>alert(1)</script>", "<img src=x onerror=y>" })
        {
            RichText.Html(attack).Should().NotContain("href").And.NotContain("src=\"").And.NotContain("<script").And.NotContain("<img");
        }

        RichText.Html(new string('>', 20_000) + "x").Should().NotBeEmpty();
    }

    [Fact]
    public void A_tape_fraction_is_never_broken() =>
        WholeFigures.Of("found 1-3/4&quot; and 3&#39;-6 1/2&quot;").Should().Be(
            "found <span class=\"figure\">1-3/4&quot;</span> and <span class=\"figure\">3&#39;-6 1/2&quot;</span>");

    [Fact]
    public void Markdown_holds_no_tag()
    {
        foreach (var (name, walk) in Walks.Examples)
        {
            PunchPage.Markdown(walk, "en", Walks.When).Should().NotMatchRegex("(?<!\\\\)<[a-z/!]", name);
        }
    }

    private static readonly string[] Known =
        ["!DOCTYPE", "html", "head", "meta", "title", "style", "body", "svg", "symbol", "path", "use", "header",
            "main", "h1", "h2", "h3", "p", "ul", "li", "b", "section", "article", "div", "span", "dl", "dt", "dd",
            "details", "summary", "footer", "figure", "desc", "circle", "text"];

    private static string Page(Walk walk) => PunchPage.Html(walk, "en", Walks.When);

    [GeneratedRegex("<script|src=|url\\(|@import|https?://|href=\"(?!#)", RegexOptions.IgnoreCase)]
    private static partial Regex Outside();

    [GeneratedRegex("#[0-9a-f]{3,8}\\b(?=[; ,}\"])|rgba?\\([^)]*\\)|\\b(gr[ae]y|red|green|blue|orange)\\b", RegexOptions.IgnoreCase)]
    private static partial Regex Colour();

    [GeneratedRegex("<([!a-zA-Z][a-zA-Z0-9]*)")]
    private static partial Regex Tags();
}
