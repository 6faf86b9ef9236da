using System.CommandLine;
using WetCheck.Cli.Files;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck draw</c>: a drawing of the job, to look at or to print.</summary>
internal static class DrawCommand
{
    private const string Ending = ".svg";

    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var (job, drawing, changed) = (Typed.Job(), Typed.Drawing(Room.Drawings), Typed.If());
        var (into, force, language) = (Typed.Into(Ending), Typed.Force(), Typed.Asked());
        var command = new Command("draw", "Draw the job, true to its figures: SVG, to look at or to print.")
        {
            job, drawing, changed, into, force, language,
        };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(into) is { } named && !named.EndsWith(Ending, StringComparison.OrdinalIgnoreCase))
            {
                throw new Halt(ExitCode.TypedWrong, $"A drawing is written as {Ending}. End {named} in {Ending}.");
            }

            var opened = Opened.Find(parsed.GetValue(job), "draw", parsed.GetValue(rules), terminal, parsed.GetValue(changed) ?? []);
            var (svg, missing) = opened.Room.Draw(parsed.GetValue(drawing), parsed.GetValue(language) ?? Typed.English);
            if (svg is null)
            {
                terminal.Err.WriteLine(missing);
                return (int)ExitCode.Unfinished;
            }

            if (parsed.GetValue(into) is { } target)
            {
                new ListFile(opened, parsed.GetValue(force), terminal).Write(target, svg);
            }
            else
            {
                terminal.Out.Write(svg);
            }

            return (int)opened.ReadCode;
        });
        return command;
    }
}
