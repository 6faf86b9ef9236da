using System.Globalization;
using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace WetCheck.Tests.Reporting.Print;

/// <summary>A page as paper takes it: the text of each sheet, and on which sheet each entry begins and ends.</summary>
/// <param name="Sheets">Text of each sheet, in order.</param>
/// <param name="Entries">In the order of the page, sheets counted from 0.</param>
internal sealed record Printed(IReadOnlyList<string> Sheets, IReadOnlyList<PrintedEntry> Entries)
{
    /// <summary>An ink spot at both ends of each entry, which takes no room and is found again in the print.</summary>
    private const string Mark = """
        () => [...document.querySelectorAll('.item')].map((item, at) => {
          item.style.position = 'relative';
          for (const [end, place] of [['s', 'top'], ['e', 'bottom']]) {
            const spot = document.createElement('span');
            spot.textContent = `q${end}${at}q`;
            spot.style.cssText = `position:absolute;${place}:0;left:0;font:1px sans-serif;letter-spacing:0;white-space:nowrap`;
            item.append(spot);
          }
          return (item.closest('.stop') ? '!' : '') + (item.querySelector('.number')?.textContent ?? item.textContent.slice(0, 40));
        })
        """;

    public static async Task<Printed> Of(IPage page, string paper)
    {
        var entries = await page.EvaluateAsync<string[]>(Mark);
        using var document = PdfDocument.Open(await page.PdfAsync(new PagePdfOptions { Format = paper, PreferCSSPageSize = false }));
        var sheets = document.GetPages().Select(sheet => sheet.Text).ToList();
        return new Printed(sheets, [.. entries.Select((entry, at) =>
            new PrintedEntry(entry.TrimStart('!'), entry.StartsWith('!'), SheetOf(sheets, "s", at), SheetOf(sheets, "e", at)))]);
    }

    private static int SheetOf(List<string> sheets, string end, int at)
    {
        var spot = $"q{end}{at.ToString(CultureInfo.InvariantCulture)}q";
        return sheets.FindIndex(sheet => sheet.Contains(spot, StringComparison.Ordinal));
    }
}

/// <summary>One entry on paper.</summary>
internal sealed record PrintedEntry(string Number, bool IsStop, int From, int To);
