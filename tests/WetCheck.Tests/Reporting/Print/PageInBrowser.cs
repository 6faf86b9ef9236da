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

    public static TheoryData<string> Examples => ["juniper", "juniper-made-right", "spruce", "banksia", "five-answers"];

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task On_a_narrow_phone_it_is_one_column_and_fetches_nothing(string example)
    {
        var (page, fetched) = await browser.Open(Html(example), 320, 640);
        (await page.EvaluateAsync<int>("document.documentElement.scrollWidth")).Should().BeLessThanOrEqualTo(320);
        fetched.Should().BeEmpty();
        await page.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task On_a_phone_nothing_that_only_paper_can_keep_is_shown(string example)
    {
        var (page, _) = await browser.Open(Html(example), 390, 844);
        (await page.EvaluateAsync<int>("[...document.querySelectorAll('.write')].filter(e => e.offsetHeight > 0).length")).Should().Be(0);
        await page.CloseAsync();
    }

    [Fact]
    public async Task On_paper_every_stop_is_on_the_first_page_and_no_entry_is_split()
    {
        var (page, _) = await browser.Open(Html("juniper"), LetterWidth, LetterHeight);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        (await page.EvaluateAsync<double>("document.querySelector('.stop').getBoundingClientRect().bottom")).Should().BeLessThan(LetterHeight);
        (await page.EvaluateAsync<bool>("[...document.querySelectorAll('.item')].every(e => getComputedStyle(e).breakInside === 'avoid')")).Should().BeTrue();
        await page.CloseAsync();
    }

    [Theory]
    [InlineData("Letter")]
    [InlineData("A4")]
    public async Task It_prints_on_few_pages(string paper)
    {
        var (page, _) = await browser.Open(Html("juniper"), LetterWidth, LetterHeight);
        var printed = Encoding.Latin1.GetString(await page.PdfAsync(new PagePdfOptions { Format = paper, PreferCSSPageSize = false }));
        PrintedPage().Count(printed).Should().BeInRange(1, 4);
        await page.CloseAsync();
    }

    private static string Html(string example) => PunchPage.Html(TheBook.Walk(TheBook.Example(example)), "en", "Wed Nov 25, 4:05 pm");

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex PrintedPage();
}
