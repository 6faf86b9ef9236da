using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting.Print;

/// <summary>The list to print, as a phone shows it and as paper takes it.</summary>
public sealed partial class PageInBrowser(Browser browser) : IClassFixture<Browser>
{
    /// <summary>Of a Letter page with its margins, in the browser's pixels (96 an inch).</summary>
    private const int LetterWidth = 720;
    private const int LetterHeight = 936;

    /// <summary>Every example for every reader whose list is a page.</summary>
    public static TheoryData<string, Reader> Pages => [.. Names.SelectMany(name => Readers.Select(reader => (name, reader)))];

    private static readonly string[] Names = ["juniper", "juniper-made-right", "spruce", "banksia", "five-answers"];

    private static readonly Reader[] Readers = [Reader.Setter, Reader.Owner];

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task On_a_narrow_phone_it_is_one_column_and_fetches_nothing(string example, Reader reader)
    {
        var (page, fetched) = await browser.Open(Html(example, reader), 320, 640);
        (await page.EvaluateAsync<int>("document.documentElement.scrollWidth")).Should().BeLessThanOrEqualTo(320);
        fetched.Should().BeEmpty();
        await page.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task On_a_phone_nothing_that_only_paper_can_keep_is_shown(string example, Reader reader)
    {
        var (page, _) = await browser.Open(Html(example, reader), 390, 844);
        (await page.EvaluateAsync<int>("[...document.querySelectorAll('.write')].filter(e => e.offsetHeight > 0).length")).Should().Be(0);
        await page.CloseAsync();
    }

    [Theory]
    [InlineData(Reader.Setter)]
    [InlineData(Reader.Owner)]
    public async Task On_paper_every_stop_is_on_the_first_page_and_no_entry_is_split(Reader reader)
    {
        var (page, _) = await browser.Open(Html("juniper", reader), LetterWidth, LetterHeight);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        (await page.EvaluateAsync<double>("document.querySelector('.stop').getBoundingClientRect().bottom")).Should()
            .BeLessThan(LetterHeight);
        (await page.EvaluateAsync<bool>("[...document.querySelectorAll('.item')].every(e => "
            + "getComputedStyle(e).breakInside === 'avoid')")).Should().BeTrue();
        await page.CloseAsync();
    }

    [Theory]
    [InlineData("Letter", "juniper", Reader.Setter, 4)]
    [InlineData("A4", "juniper", Reader.Setter, 4)]
    [InlineData("Letter", "juniper", Reader.Owner, 8)]
    [InlineData("A4", "juniper", Reader.Owner, 8)]
    [InlineData("Letter", "banksia", Reader.Owner, 2)]
    [InlineData("A4", "five-answers", Reader.Owner, 5)]
    [InlineData("Letter", "five-answers", Reader.Owner, 5)]
    public async Task It_prints_on_few_pages(string paper, string example, Reader reader, int most)
    {
        var (page, _) = await browser.Open(Html(example, reader), LetterWidth, LetterHeight);
        var printed = Encoding.Latin1.GetString(await page.PdfAsync(new PagePdfOptions { Format = paper, PreferCSSPageSize = false }));
        PrintedPage().Count(printed).Should().BeInRange(1, most);
        await page.CloseAsync();
    }

    /// <summary>The owner's two pages: what to give begins on a printed page of its own.</summary>
    [Fact]
    public async Task The_page_to_give_begins_on_a_new_printed_page()
    {
        var (page, _) = await browser.Open(Html("juniper", Reader.Owner), LetterWidth, LetterHeight);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        (await page.EvaluateAsync<string[]>("[...document.querySelectorAll('main')].map(e => "
            + "getComputedStyle(e).breakBefore)")).Should().Equal("auto", "page");
        (await page.EvaluateAsync<bool>("[...document.querySelectorAll('.line, .say, .whole')].every(e => "
            + "getComputedStyle(e).breakInside === 'avoid')")).Should().BeTrue();
        await page.CloseAsync();
    }

    private static string Html(string example, Reader reader) =>
        PunchPage.Html(TheBook.Walk(TheBook.Example(example)), "en", "Wed Nov 25, 4:05 pm", reader);

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex PrintedPage();
}
