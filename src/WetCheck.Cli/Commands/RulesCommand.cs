using System.CommandLine;
using WetCheck.Cli.Files;
using WetCheck.Reporting;

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
            if (parsed.GetValue(format) == "md")
            {
                terminal.Out.Write(RulePage.Of(BookHere.Load(parsed.GetValue(rules), terminal)));
            }
            else
            {
                var (book, cases) = BookHere.LoadWithCases(parsed.GetValue(rules), terminal);
                terminal.Out.Write(RuleList.Of(book, cases));
            }

            return (int)ExitCode.NothingOwed;
        });
        return command;
    }
}
