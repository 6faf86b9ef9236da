using System.CommandLine;
using WetCheck.Cli.Files;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck rules code</c>: the codes that the book knows.</summary>
internal static class RulesCodeCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var compare = new Option<string[]>("--compare")
        {
            HelpName = "A B",
            Arity = new ArgumentArity(2, 2),
            AllowMultipleArgumentsPerToken = true,
            Description = "What differs between two code families.",
        };
        var job = new Argument<string?>("JOB")
        {
            Arity = ArgumentArity.ZeroOrOne,
            Description = "A job: what its local changes did to the book.",
        };
        var command = new Command("code", "List the codes of the book, and what differs between two.") { job, compare };
        command.SetAction(parsed =>
        {
            var folder = parsed.GetValue(rules);
            var book = BookHere.Load(folder, terminal);
            terminal.Out.Write(parsed.GetValue(compare) is { Length: 2 } two ? book.Compare(two[0], two[1])
                : parsed.GetValue(job) is { } name
                    ? book.Changes(Opened.Read(JobFile.Find(name, "rules code", terminal), book, terminal).Room.Book)
                : book.Codes());
            return (int)ExitCode.NothingOwed;
        });
        return command;
    }
}
