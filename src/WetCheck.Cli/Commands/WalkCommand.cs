using System.CommandLine;
using WetCheck.Cli.Files;
using WetCheck.Cli.Text;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck walk</c>: hold a job against the book and show the list.</summary>
internal static class WalkCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var (job, stage, changed, format, all) = (Typed.Job(), Typed.Stage(), Typed.If(), Typed.Format(Typed.Formats), Typed.All());
        var command = new Command("walk", "Hold a job against the rule book: what to fix, what to look at.") { job, stage, changed, format, all };
        command.SetAction(parsed =>
        {
            var file = JobFile.Find(parsed.GetValue(job), "walk", terminal);
            var held = Held.Of(file, BookHere.LoadFor(file, parsed.GetValue(rules), terminal), Changes(parsed.GetValue(stage), parsed.GetValue(changed)), terminal);
            terminal.Out.Write(Lists.Screen(held.Walk, parsed.GetValue(format) ?? "text", parsed.GetValue(all), terminal));
            return (int)held.Code;
        });
        return command;
    }

    /// <summary>A stage is a line of the job file like any other.</summary>
    private static List<string> Changes(string? stage, string[]? changed) =>
        [.. (string[])(stage is null ? [] : ["stage: " + stage]), .. changed ?? []];
}
