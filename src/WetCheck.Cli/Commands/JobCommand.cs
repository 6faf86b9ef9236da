using System.CommandLine;
using WetCheck.Cli.Files;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck job</c>: a new job file, or what job files are made of.</summary>
internal static class JobCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var schema = new Command("schema", "Print the JSON Schema of a job file, for editors.");
        schema.SetAction(parsed =>
        {
            terminal.Out.WriteLine(BookHere.Load(parsed.GetValue(rules), terminal).Schema());
            return (int)ExitCode.NothingOwed;
        });
        return new Command("job", "A new job file, or what one may hold.")
        {
            NewJobCommand.Build(rules, terminal), SampleJobCommand.Build(terminal), schema,
        };
    }
}
