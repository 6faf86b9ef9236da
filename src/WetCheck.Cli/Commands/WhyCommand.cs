using System.CommandLine;
using WetCheck.Cli.Files;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck why</c>: what stands behind one line of a list, or behind one rule.</summary>
internal static class WhyCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var first = new Argument<string>("JOB") { Description = "A job file, or its name. Or a rule alone: liner/turn-up, 214." };
        var number = new Argument<string?>("NUMBER") { Arity = ArgumentArity.ZeroOrOne, Description = "A number of the list: 214-D." };
        var command = new Command("why", "Explain one line of a list, or one rule.") { first, number };
        command.SetAction(parsed =>
        {
            var (folder, named) = (parsed.GetValue(rules), parsed.GetValue(first)!);
            if (parsed.GetValue(number) is not { } asked)
            {
                terminal.Out.Write(BookHere.Load(folder, terminal).Why(named));
                return (int)ExitCode.NothingOwed;
            }

            var opened = Opened.Find(named, "why", folder, terminal);
            terminal.Out.Write(opened.Room.Why(asked, Typed.English, terminal.Now));
            return (int)opened.ReadCode;
        });
        return command;
    }
}
