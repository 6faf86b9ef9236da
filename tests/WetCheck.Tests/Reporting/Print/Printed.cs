using System.Globalization;
using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace WetCheck.Tests.Reporting.Print;

/// <summary>A page as paper takes it: the text of each sheet, and on which sheet each entry begins and ends.</summary>
/// <param name="Sheets">Text of each sheet, in order.</param>
/// <param name="Entries">In the order of the page, sheets counted from 0.</param>
/// <param name="Starts">The sheet on which each list of the page begins: an owner has one to keep and one to give.</param>
internal sealed record Printed(IReadOnlyList<string> Sheets, IReadOnlyList<PrintedEntry> Entries, IReadOnlyList<int> Starts)
{
    /// <summary>An ink spot at both ends of each entry, which takes no room and is found again in the print.</summary>
    private const string Mark = """
        () => {
          const spot = (of, text, place) => {
            of.style.position = 'relative';
            const made = document.createElement('span');
            made.textContent = text;
            made.style.cssText = `position:absolute;${place}:0;left:0;font:1px sans-serif;letter-spacing:0;white-space:nowrap`;
            of.append(made);
          };
          const lists = [...document.querySelectorAll('main')];
          lists.forEach((list, at) => spot(list, `qm${at}q`, 'top'));
          return [...document.querySelectorAll('.item')].map((item, at) => {
            spot(item, `qs${at}q`, 'top');
            spot(item, `qe${at}q`, 'bottom');
            return `${lists.indexOf(item.closest('main'))} ${item.closest('.stop') ? '!' : ''}${item.querySelector('.number')?.textContent ?? item.textContent.slice(0, 40)}`;
          });
        }
        """;

    public static async Task<Printed> Of(IPage page, string paper)
    {
        var entries = await page.EvaluateAsync<string[]>(Mark);
        using var document = PdfDocument.Open(await page.PdfAsync(new PagePdfOptions { Format = paper, PreferCSSPageSize = false }));
        var sheets = document.GetPages().Select(sheet => sheet.Text).ToList();
        var lists = await page.Locator("main").CountAsync();
        return new Printed(
            sheets,
            [.. entries.Select(entry => entry.Split(' ', 2)).Select((entry, at) => new PrintedEntry(
                int.Parse(entry[0], CultureInfo.InvariantCulture), entry[1].TrimStart('!'), entry[1]
                    .StartsWith('!'), SheetOf(sheets, "s", at), SheetOf(sheets, "e", at)))],
            [.. Enumerable.Range(0, lists).Select(at => SheetOf(sheets, "m", at))]);
    }

    private static int SheetOf(List<string> sheets, string end, int at)
    {
        var spot = $"q{end}{at.ToString(CultureInfo.InvariantCulture)}q";
        return sheets.FindIndex(sheet => sheet.Contains(spot, StringComparison.Ordinal));
    }
}

/// <summary>One entry on paper.</summary>
internal sealed record PrintedEntry(int List, string Number, bool IsStop, int From, int To);
