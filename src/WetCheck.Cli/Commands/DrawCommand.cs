using System.CommandLine;
using WetCheck.Cli.Files;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck draw</c>: a drawing of the job, to look at or to print.</summary>
internal static class DrawCommand
{
    /// <summary>What can be drawn; the first without a name. Null: the job does not tell what it needs.</summary>
    private static readonly (string Name, Func<FloorReport, Walk, string, string?> Draw, string Missing)[] s_drawings =
    [
        ("plan", PlanDrawing.Of, "draw.no-floor"),
        ("section", SectionDrawing.Of, "draw.no-section"),
        ("nails", NailDrawing.Of, "draw.no-nails"),
        ("liner", LinerDrawing.Of, "draw.no-liner"),
        ("contours", ContourDrawing.Of, "draw.no-contours"),
    ];

    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var (job, drawing, changed, into, language) = (Typed.Job(), Typed.Drawing([.. s_drawings.Select(one => one.Name)]), Typed.If(), Typed.Into(), Typed.Asked());
        var command = new Command("draw", "Draw the job, true to its figures: SVG, to look at or to print.") { job, drawing, changed, into, language };
        command.SetAction(parsed =>
        {
            var file = JobFile.Find(parsed.GetValue(job), "draw", terminal);
            var walk = Held.Of(file, BookHere.LoadFor(file, parsed.GetValue(rules), terminal), parsed.GetValue(changed) ?? [], terminal).Walk;
            var (asked, named) = (parsed.GetValue(language) ?? Languages.English, parsed.GetValue(drawing));
            var one = s_drawings.FirstOrDefault(drawn => drawn.Name == named, s_drawings[0]);
            if (one.Draw(FloorSheets.Of(walk.Job, walk.Book), walk, asked) is not { } svg)
            {
                terminal.Err.WriteLine(new Phrases(walk.Book, asked)[one.Missing]);
                return (int)ExitCode.Unfinished;
            }

            if (parsed.GetValue(into) is { } target)
            {
                ListFile.Write(target, svg, terminal);
                terminal.Out.WriteLine($"Written: {target}");
            }
            else
            {
                terminal.Out.Write(svg);
            }

            return (int)ExitCodes.Of(walk.Problems);
        });
        return command;
    }
}
