using System.Globalization;
using WetCheck.Flow;
using WetCheck.Reporting;
using WetCheck.Tests.Pan;
using WetCheck.Tests.Reporting.Print;

namespace WetCheck.Tests.Drawings;

/// <summary>In a real browser, with its own letters: no text lies on another, no line goes through one, none is off the sheet.</summary>
public sealed class NothingOverlaps(Browser browser) : IClassFixture<Browser>
{
    /// <summary>Boxes are those of the letters as drawn; lines are followed in steps of a quarter of a millimetre.</summary>
    private const string Faults = """
        () => [...document.querySelectorAll('svg.drawing')].flatMap((svg, at) => {
          const lost = svg.dataset.lost ? [`${at}: ${svg.dataset.lost} labels found no place`] : [];
          const sheet = svg.getBoundingClientRect();
          const texts = [...svg.querySelectorAll(':scope > text')].map(t => ({ t: t.textContent, r: t.getBoundingClientRect() }));
          const tight = texts.map(({ t, r }) => ({ t, r: { left: r.left + 0.3, right: r.right - 0.3, top: r.top + r.height * 0.2, bottom: r.bottom - r.height * 0.2 } }));
          const off = texts.filter(({ r }) => r.left < sheet.left - 0.5 || r.right > sheet.right + 0.5 || r.top < sheet.top - 2 || r.bottom > sheet.bottom + 2).map(({ t }) => `${at}: "${t}" is off the sheet`);
          const on = [];
          for (let i = 0; i < tight.length; i++) for (let j = i + 1; j < tight.length; j++) {
            const [a, b] = [tight[i].r, tight[j].r];
            if (a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom) on.push(`${at}: "${tight[i].t}" lies on "${tight[j].t}"`);
          }
          const through = new Set();
          for (const path of svg.querySelectorAll(':scope > path, :scope > circle')) {
            const matrix = path.getScreenCTM(), length = path.getTotalLength();
            for (let d = 0; d <= length; d += 0.25) {
              const p = path.getPointAtLength(d).matrixTransform(matrix);
              for (const { t, r } of tight) if (p.x > r.left && p.x < r.right && p.y > r.top && p.y < r.bottom) through.add(`${at}: a line goes through "${t}"`);
            }
          }
          return [...lost, ...off, ...on, ...through];
        })
        """;

    [Fact]
    public async Task On_the_drawings_of_all_examples() => await Look(Examples());

    [Fact]
    public async Task On_plans_of_floors_drawn_at_random() => await Look(RandomFloors());

    [Fact]
    public async Task A_text_on_a_line_is_found()
    {
        var (page, _) =
            await browser.Open("<svg class=\"drawing\" width=\"50mm\" height=\"20mm\" viewBox=\"0 0 50 20\"><path "
                + "d=\"M0 10L50 10\"/><text x=\"10\" y=\"11\" font-size=\"4\">on it</text><text x=\"12\" y=\"11\" "
                + "font-size=\"4\">twice</text></svg>", 800, 600);
        (await page.EvaluateAsync<string[]>(Faults)).Should().HaveCount(3);
        await page.CloseAsync();
    }

    private async Task Look(IEnumerable<string> drawings)
    {
        var all = drawings.ToList();
        all.Should().NotBeEmpty();
        var (page, _) =
            await browser.Open($"<style>{SvgText.Style}</style><body>"
            + string.Concat(all.Select(one => $"<div>{one}</div>")) + "</body>", 1200, 900);
        (await page.EvaluateAsync<string[]>(Faults)).Should().BeEmpty();
        await page.CloseAsync();
    }

    private static IEnumerable<string> Examples()
    {
        foreach (var walk in new[] { "juniper", "juniper-made-right", "spruce", "banksia", "five-answers", "larch",
            "elder" }.Select(name => TheBook.Walk(TheBook.Example(name))).Append(TheBook.Walk(DrawnJobs.Whole))
            .Append(TheBook.Walk(DrawnJobs.Read)))
        {
            foreach (var language in new[] { "en", "es" })
            {
                var floor = FloorSheets.Of(walk.Job, walk.Book);
                foreach (var drawing in new[] { PlanDrawing.Of(floor, walk, language),
                    SectionDrawing.Of(floor, walk, language), NailDrawing.Of(floor, walk, language),
                    ContourDrawing.Of(floor, walk, language), LinerDrawing.Of(floor, walk, language) }.OfType<string>())
                {
                    yield return drawing;
                }

                foreach (var reader in new[] { Reader.Setter, Reader.Owner, Reader.Helper })
                {
                    var html = PunchPage.Html(walk, language, "now", reader);
                    for (var from = html.IndexOf("<svg class=\"drawing\"",
                        StringComparison.Ordinal); from >= 0; from = html.IndexOf("<svg class=\"drawing\"", from
                        + 1, StringComparison.Ordinal))
                    {
                        yield return html[from..(html.IndexOf("</svg>", from, StringComparison.Ordinal) + 6)];
                    }
                }
            }
        }
    }

    private static IEnumerable<string> RandomFloors()
    {
        for (var seed = 0; seed < Depth.Of(daily: 20, deep: 60, night: 600); seed++)
        {
            var random = new Random(seed);
            var (outline, drain) = seed % 2 == 0 ? RandomRooms.Star(random) : RandomRooms.Convex(random);
            var (left, front) = (outline.Corners.Min(at => at.X), outline.Corners.Min(at => at.Y));
            string At(double x, double y) =>
                string.Create(CultureInfo.InvariantCulture,
                $"{Math.Round((x - left) * 4) / 4},{Math.Round((y - front) * 4) / 4}");
            var job = FloorOfAJob.Inches
                + $"shower:\n  outline: "
                + $"{string.Join(' ', outline.Corners.Select(corner => At(corner.X, corner.Y)))}\n  drain at: "
                + $"{At(drain.X, drain.Y).Replace(",", ", ", StringComparison.Ordinal)}\n"
                + (seed % 3 == 0 ? FloorOfAJob.Grate : "");
            if (Drawn.PlanOf(TheBook.Walk(job)) is { } plan)
            {
                yield return plan;
            }
        }
    }
}
