using System.CommandLine;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck rules prove</c>: run the cases.</summary>
internal static class ProveCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var which = new Argument<string?>("WHICH") { Arity = ArgumentArity.ZeroOrOne, Description = "A chapter, a rule, a file of either, or the folder of a whole rule book." };
        var command = new Command("prove", "Run the cases of the rules.") { which };
        command.SetAction(parsed => 0);
        return command;
    }
}
