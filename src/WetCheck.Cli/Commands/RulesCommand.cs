using System.CommandLine;
using WetCheck.Cli.Files;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck rules</c>: what the book holds.</summary>
internal static class RulesCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var format = Typed.Format("text", "md");
        var command = new Command("rules", "List the rule book by chapter, with how sure its sources are.")
        {
            format, ProveCommand.Build(rules, terminal), NewRuleCommand.Build(rules, terminal), RulesCodeCommand.Build(rules, terminal),
        };
        command.SetAction(parsed =>
        {
            var book = BookHere.Load(parsed.GetValue(rules), terminal);
            terminal.Out.Write(parsed.GetValue(format) == "md" ? book.Page() : book.List());
            return (int)ExitCode.NothingOwed;
        });
        return command;
    }
}
