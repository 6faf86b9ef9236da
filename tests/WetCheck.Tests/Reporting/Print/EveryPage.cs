using System.Text;
using Microsoft.Playwright;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting.Print;

/// <summary>The page of every example for every reader: on a narrow phone, on Letter and on A4.</summary>
public sealed class EveryPage(Browser browser) : IClassFixture<Browser>
{
    /// <summary>Text that reaches out of the block it stands in. Two pixels are left for the parts of letters that hang.</summary>
    private const string Outside = """
        () => {
          const out = [], texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          while (texts.nextNode()) {
            const text = texts.currentNode;
            if (!text.data.trim()) continue;
            let block = text.parentElement;
            while (getComputedStyle(block).display.startsWith('inline') && block !== document.body) block = block.parentElement;
            const box = block.getBoundingClientRect(), indent = Math.min(0, parseFloat(getComputedStyle(block).textIndent) || 0);
            const range = document.createRange();
            range.selectNodeContents(text);
            for (const line of range.getClientRects()) {
              if (line.width && (line.left < box.left + indent - 2 || line.right > box.right + 2 || line.top < box.top - 2 || line.bottom > box.bottom + 2)) {
                out.push(text.data.trim().slice(0, 60));
                break;
              }
            }
          }
          return out;
        }
        """;

    public static TheoryData<string, string> Pages =>
    [
        .. Depth.OneOf(2, from example in Walks.Names from reader in Readers.Typed select new TheoryDataRow<string,
            string>(example, reader)),
    ];

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task On_a_narrow_phone_no_text_leaves_its_box_and_nothing_is_fetched(string example, string reader)
    {
        var html = Html(example, reader);
        var (page, fetched) = await browser.Open(html, 320, 640);
        (await page.EvaluateAsync<int>("document.documentElement.scrollWidth")).Should().BeLessThanOrEqualTo(320);
        (await page.EvaluateAsync<string[]>(Outside)).Should().BeEmpty();
        fetched.Should().BeEmpty();
        html.Should().NotContainEquivalentOf("<script");
        Encoding.UTF8.GetByteCount(html).Should().BeLessThan(200_000);
        await page.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task On_paper_no_entry_is_split_and_every_stop_stands_first(string example, string reader)
    {
        foreach (var (paper, width, height) in Depth.OneOf(2, [("Letter", 720, 936), ("A4", 698, 1003)]))
        {
            var (page, _) = await browser.Open(Html(example, reader), width, height);
            await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
            (await page.EvaluateAsync<string[]>(Outside)).Should().BeEmpty(paper);
            var printed = await Printed.Of(page, paper);
            printed.Entries.Where(entry => entry.From < 0 || entry.From != entry.To).Should().BeEmpty(paper);
            printed.Entries.Where(entry => entry.IsStop && entry.From != printed.Starts[entry.List]
                && !GoesOn(printed.Sheets[printed.Starts[entry.List]])).Should().BeEmpty(paper);
            await page.CloseAsync();
        }
    }

    /// <summary>Nails low on every wall, and all corners cut.</summary>
    [Theory]
    [InlineData("setter")]
    [InlineData("owner")]
    [InlineData("helper")]
    public async Task Where_stops_need_more_than_a_sheet_the_first_says_so(string reader)
    {
        var job = TheBook.Job("""
            job: Many stops (invented)
            method: liner under mortar
            units: inches
            stage: flood test
            plumbing code: IRC 2021
            curb: { height: 6, cap adds: 1 }
            liner: { corners: all cut }
            nails:
              seen: all
              left: 1 below, 2 below
              back: 1 below, 2 below
              right: 1 below
              curb inside: 2 below
            """);
        var walk = TheBook.Walk(job);
        walk.ToFix.Count(entry => entry.Severity == WetCheck.Model.Severity.Stop).Should().BeGreaterThan(6);
        var (page, _) = await browser.Open(PunchPage.Html(walk, "en", Walks.When, Readers.Of(reader)), 720, 936);
        var printed = await Printed.Of(page, "Letter");
        printed.Sheets.Count.Should().BeGreaterThan(1);
        printed.Entries.Where(entry => entry.From != entry.To).Should().BeEmpty();
        printed.Starts.Where(sheet => !GoesOn(printed.Sheets[sheet])).Should().BeEmpty();
        await page.CloseAsync();
    }

    private static bool GoesOn(string sheet) => new[] { "en", "es" }
        .SelectMany(language => StopWords.Select(key => TheBook.Book.Words[language][key].Split('{')[0]))
        .Any(words => Close(sheet).Contains(Close(words), StringComparison.Ordinal));

    private static readonly string[] StopWords = ["page.stops-go-on", "owner.stops-go-on", "helper.stops"];

    /// <summary>Print has no spaces, only distances.</summary>
    private static string Close(string text) => text.Replace(" ", "", StringComparison.Ordinal);

    private static string Html(string example, string reader)
    {
        var whom = Readers.Of(reader);
        return PunchPage.Html(Walks.Example(example), Readers.Language(whom), Walks.When, whom);
    }
}
