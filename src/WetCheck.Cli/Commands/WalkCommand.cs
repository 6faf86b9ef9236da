using System.CommandLine;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck walk</c>: hold a job against the book and show the list.</summary>
internal static class WalkCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var (job, stage, changed, format, all) = (Typed.Job(), Typed.Stage(), Typed.If(), Typed.Format(Typed.Formats), Typed.All());
        var command = new Command("walk", "Hold a job against the rule book: what to fix, what to look at.")
        {
            job, stage, changed, format, all,
        };
        command.SetAction(parsed =>
        {
            // A stage is a line of the job file like any other.
            var changes =
                (parsed.GetValue(stage) is { } stop ? ["stage: " + stop] : Array.Empty<string>())
                .Concat(parsed.GetValue(changed) ?? []);
            var opened = Opened.Find(parsed.GetValue(job), "walk", parsed.GetValue(rules), terminal, changes);
            var form = parsed.GetValue(format) ?? Typed.Formats[0];
            terminal.Out.Write(form == Typed.Formats[0]
                ? opened.Room.Screen(Typed.English, terminal.Now, parsed.GetValue(all))
                : opened.Room.List(Typed.Form(form), ForWhom.Setter, Typed.English, terminal.Now));
            return (int)opened.Code;
        });
        return command;
    }
}
