using System.CommandLine;
using System.CommandLine.Help;
using WetCheck.Cli.Commands;
using WetCheck.Cli.Help;
using WetCheck.Cli.Text;

namespace WetCheck.Cli;

/// <summary>The words that can be typed, and what runs on them.</summary>
internal static class CommandLine
{
    public static ExitCode Run(string[] args, Terminal terminal)
    {
        terminal = terminal with { Out = new PlainWriter(terminal.Out), Err = new PlainWriter(terminal.Err) };

        if (args.FirstOrDefault(TooLong.Is) is { } endless)
        {
            terminal.Err.WriteLine(TooLong.Say(endless));
            return ExitCode.TypedWrong;
        }

        // No response files: "@4th-street" is a name like any other.
        var parsed = Root(terminal).Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        try
        {
            return parsed.Action is not HelpWithExamples && TypedWrong.Find(parsed) is { } wrong
                ? throw new Halt(ExitCode.TypedWrong, wrong)
                : (ExitCode)parsed.Invoke(new InvocationConfiguration
                {
                    Output = terminal.Out,
                    Error = terminal.Err,
                    EnableDefaultExceptionHandler = false
                });
        }
        catch (RefusedException refused)
        {
            terminal.Err.WriteLine(refused.Message);
            return ExitCodes.Of(refused.How);
        }
    }

    public static RootCommand Root(Terminal terminal)
    {
        var rules = Typed.Rules();
        var root = new RootCommand("Holds a shower or wet room under construction against the rules of the trade, stop by stop.")
        {
            rules,
            WalkCommand.Build(rules, terminal),
            WhyCommand.Build(rules, terminal),
            LookCommand.Build(rules, terminal),
            PunchCommand.Build(rules, terminal),
            PanCommand.Build(rules, terminal),
            DrawCommand.Build(rules, terminal),
            TearoutCommand.Build(rules, terminal),
            RulesCommand.Build(rules, terminal),
            JobCommand.Build(rules, terminal),
        };
        var option = root.Options.OfType<HelpOption>().Single();
        var help = new HelpWithExamples(new HelpAction { MaxWidth = 78 }, Examples.ByCommand);
        option.Action = help;
        root.SetAction(help.Invoke);
        return root;
    }
}
