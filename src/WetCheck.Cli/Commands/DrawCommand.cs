using System.CommandLine;
using WetCheck.Cli.Files;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck draw</c>: a drawing of the job, to look at or to print.</summary>
internal static class DrawCommand
{
    private const string Ending = ".svg";

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
        var (job, drawing, changed) = (Typed.Job(), Typed.Drawing([.. s_drawings.Select(one => one.Name)]), Typed.If());
        var (into, force, language) = (Typed.Into(Ending), Typed.Force(), Typed.Asked());
        var command = new Command("draw", "Draw the job, true to its figures: SVG, to look at or to print.") { job, drawing, changed, into, force, language };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(into) is { } named && !named.EndsWith(Ending, StringComparison.OrdinalIgnoreCase))
            {
                throw new Halt(ExitCode.TypedWrong, $"A drawing is written as {Ending}. End {named} in {Ending}.");
            }

            var file = JobFile.Find(parsed.GetValue(job), "draw", terminal);
            var walk = Held.Of(file, BookHere.LoadFor(file, parsed.GetValue(rules), terminal), parsed.GetValue(changed) ?? [], terminal).Walk;
            var asked = parsed.GetValue(language) ?? Languages.English;
            var one = s_drawings.FirstOrDefault(drawn => drawn.Name == parsed.GetValue(drawing), s_drawings[0]);
            if (one.Draw(FloorSheets.Of(walk.Job, walk.Book), walk, asked) is not { } svg)
            {
                terminal.Err.WriteLine(new Phrases(walk.Book, asked)[one.Missing]);
                return (int)ExitCode.Unfinished;
            }

            if (parsed.GetValue(into) is { } target)
            {
                new ListFile(file, walk, parsed.GetValue(force), terminal).Write(target, svg);
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
