using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting.Print;

/// <summary>Row 18 for the helper's list: on paper, and on a phone held beside the work.</summary>
public sealed partial class HelperInBrowser(Browser browser) : IClassFixture<Browser>
{
    /// <summary>Inside the margins, in the browser's pixels (96 an inch).</summary>
    private const int Width = 720;
    private const int LetterHeight = 936;
    private const int A4Height = 1002;

    public static TheoryData<string> Examples => ["juniper", "juniper-made-right", "spruce", "banksia", "five-answers"];

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task On_a_narrow_phone_one_language_stands_below_the_other(string example)
    {
        var (page, fetched) = await browser.Open(Html(example), 320, 640);
        (await page.EvaluateAsync<int>("document.documentElement.scrollWidth")).Should().BeLessThanOrEqualTo(320);
        (await page.EvaluateAsync<bool>("[...document.querySelectorAll('.pair')].every(e => e.children.length < 2 || "
            + "e.children[1].getBoundingClientRect().top >= e.children[0].getBoundingClientRect().bottom - 1)")).Should().BeTrue();
        fetched.Should().BeEmpty();
        await page.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task On_paper_the_languages_stand_side_by_side_and_nothing_is_split(string example)
    {
        foreach (var height in new[] { LetterHeight, A4Height })
        {
            var (page, _) = await browser.Open(Html(example), Width, height);
            await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
            (await page.EvaluateAsync<bool>("[...document.querySelectorAll('.pair')].every(e => e.children.length < 2 "
                + "|| Math.abs(e.children[0].getBoundingClientRect().top - e.children[1].getBoundingClientRect().top) "
                + "< 2)")).Should().BeTrue();
            (await page.EvaluateAsync<bool>("[...document.querySelectorAll('.item')].every(e => "
                + "getComputedStyle(e).breakInside === 'avoid')")).Should().BeTrue();
            (await page.EvaluateAsync<bool>($"[...document.querySelectorAll('.item')].every(e => "
                + $"e.getBoundingClientRect().height < {height / 2} && [...e.querySelectorAll('*')].every(c => "
                + $"c.scrollWidth <= c.clientWidth + 1 || getComputedStyle(c).display.startsWith('inline')))")).Should().BeTrue();
            await page.CloseAsync();
        }
    }

    /// <summary>Stops stand where the hands come to them; the top of page 1 names all of them.</summary>
    [Fact]
    public async Task Every_stop_is_named_on_the_first_page()
    {
        var (page, _) = await browser.Open(Html("juniper"), Width, LetterHeight);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        (await page.EvaluateAsync<double>("document.querySelector('.verdict').getBoundingClientRect().bottom")).Should()
            .BeLessThan(LetterHeight);
        (await page.EvaluateAsync<string>("document.querySelector('.verdict').textContent")).Should().Contain("221-A, 226-CD");
        await page.CloseAsync();
    }

    [Theory]
    [InlineData("Letter")]
    [InlineData("A4")]
    public async Task It_prints_on_few_pages(string paper)
    {
        var (page, _) = await browser.Open(Html("juniper"), Width, LetterHeight);
        var printed = Encoding.Latin1.GetString(await page.PdfAsync(new PagePdfOptions { Format = paper, PreferCSSPageSize = false }));
        PrintedPage().Count(printed).Should().BeInRange(1, 4);
        await page.CloseAsync();
    }

    /// <summary>Whatever stands above them, and however many they are: a sheet holds five things of one's own work.</summary>
    [Fact]
    public async Task A_sheet_holds_at_most_five_things_to_do()
    {
        var many = HelperTests.Many(Walks.Example("juniper"), 17);
        foreach (var (paper, height) in new[] { ("Letter", LetterHeight), ("A4", A4Height) })
        {
            var (page, _) = await browser.Open(PunchPage.Html(many, "both", Walks.When, Reader.Helper), Width, height);
            await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
            var printed = await Printed.Of(page, paper);
            printed.Entries.Where(entry => many.Entries.Any(own => own.Number == entry.Number))
                .GroupBy(entry => entry.From).Max(sheet => sheet.Count()).Should().BeInRange(4, 5, paper);
            await page.CloseAsync();
        }
    }

    [Fact]
    public void It_is_one_black_file_without_a_script()
    {
        foreach (var (name, walk) in Walks.All)
        {
            var html = PunchPage.Html(walk, "both", "", Reader.Helper);
            Encoding.UTF8.GetByteCount(html).Should().BeLessThan(200_000, name);
            html.Should().NotMatchRegex("<script|src=|url\\(|https?://", name);
        }
    }

    private static string Html(string example) => PunchPage.Html(Walks.Example(example), "both", Walks.When, Reader.Helper);

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex PrintedPage();
}
