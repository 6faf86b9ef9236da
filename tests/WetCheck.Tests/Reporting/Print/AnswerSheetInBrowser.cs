using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using WetCheck.Reporting;
using WetCheck.Tests.Reporting.Start;

namespace WetCheck.Tests.Reporting.Print;

/// <summary>The sheet to write on: the questions of the file, on one page.</summary>
public sealed partial class AnswerSheetInBrowser(Browser browser) : IClassFixture<Browser>
{
    /// <summary>9 mm at 96 to the inch, less a rounding.</summary>
    private const double NineMillimetres = 33.9;

    private static readonly string[] Languages = ["en", "es"];

    public static TheoryData<string, string, string, string> All => Starts.All;

    public static TheoryData<string> Methods => [.. TheBook.Book.Vocabulary.Methods.Select(method => method.Name), ""];

    public static TheoryData<string, string> MethodsOnPapers
    {
        get
        {
            var all = new TheoryData<string, string>();
            foreach (var method in TheBook.Book.Vocabulary.Methods.Select(method => method.Name).Append(""))
            {
                all.Add(method, "Letter");
                all.Add(method, "A4");
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void It_asks_what_the_file_asks_in_the_same_order(string method, string stage, string size, string language)
    {
        var job = Starts.Job(method, stage, size);
        var asked = StartFile.Sections(job, TheBook.Book, language)
            .SelectMany(section => section.Lines.Count == 0 ? [section.Name]
            : section.Lines.Select(line => $"{section.Name}.{line.Name}"));
        var html = AnswerSheet.Html(job, TheBook.Book, language);
        Path().Matches(html).Select(match => match.Groups[1].Value).Should().Equal(asked);
        html.Should()
            .Contain("<footer><p>" + WebUtility.HtmlEncode(new Phrases(TheBook.Book, language)["close.record"]))
            .And.NotContain("<script");
    }

    /// <summary>At every stop, before one is known, and as it lies in the docs without a job, in both units.</summary>
    [Theory]
    [MemberData(nameof(MethodsOnPapers))]
    public async Task It_prints_on_one_page_with_nothing_cut(string name, string paper)
    {
        var method = TheBook.Book.Vocabulary.Method(name);
        // The shorter paper with the longer language.
        foreach (var language in paper == "Letter" ? Languages[1..] : Languages[..1])
        {
            string[] sheets =
            [
                .. (method?.Stops.Select(stop => stop.Name) ?? []).Append("")
                    .Select(stage => AnswerSheet.Html(Starts.Job(name, stage, ""), TheBook.Book, language)),
                AnswerSheet.Html(TheBook.Book, method, language),
                AnswerSheet.Html(TheBook.Book, method, language, metric: true),
            ];
            foreach (var html in Depth.OneOf(3, sheets))
            {
                var (page, fetched) = await browser.Open(html, 720, 936);
                var printed =
                    Encoding.Latin1.GetString(await page.PdfAsync(new PagePdfOptions
                    {
                        Format = paper,
                        PreferCSSPageSize = false
                    }));
                PrintedPage().Count(printed).Should().Be(1, html[..400]);
                (await page.EvaluateAsync<double>(
                    "Math.min(...[...document.querySelectorAll('.row:not(.known)')].map(e => e.getBoundingClientRect().height))"))
                    .Should().BeGreaterThan(NineMillimetres);
                (await Cut(page)).Should().Be(0);
                fetched.Should().BeEmpty();
                await page.CloseAsync();
            }
        }
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public async Task On_a_phone_it_is_one_column(string name)
    {
        foreach (var language in Languages)
        {
            var (page, _) = await browser.Open(AnswerSheet.Html(TheBook.Book, TheBook.Book.Vocabulary.Method(name), language), 320, 640);
            (await page.EvaluateAsync<int>("document.documentElement.scrollWidth")).Should().BeLessThanOrEqualTo(320);
            (await page.EvaluateAsync<int>("new Set([...document.querySelectorAll('.row')].map(e => "
                + "Math.round(e.getBoundingClientRect().left))).size")).Should().Be(1);
            (await Cut(page)).Should().Be(0);
            await page.CloseAsync();
        }
    }

    /// <summary>Rows whose words do not fit in them, to the side or below.</summary>
    private static Task<int> Cut(IPage page) =>
        page.EvaluateAsync<int>("[...document.querySelectorAll('.row, h2, header p')].filter(e => e.scrollWidth > "
            + "e.clientWidth + 1 || e.scrollHeight > e.clientHeight + 1).length");

    [GeneratedRegex("data-path=\"([^\"]+)\"")]
    private static partial Regex Path();

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex PrintedPage();
}
