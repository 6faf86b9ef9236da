using System.CommandLine;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck look</c>: asks what is owed and keeps each answer in the log beside the job.</summary>
internal static class LookCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var job = Typed.Job();
        var number = new Argument<string?>("NUMBER")
        {
            Arity = ArgumentArity.ZeroOrOne,
            Description =
                "A number of the list: 214-D; or a line of the job file: liner.right. Without it: all that is owed, one answer a line.",
        };
        var answer = new Argument<string?>("ANSWER")
        {
            Arity = ArgumentArity.ZeroOrOne,
            Description = "As on its line of the job file: 3-1/4. Without it: it is asked.",
        };
        var by = new Option<string?>("--by") { HelpName = "NAME", Description = "Who looked." };
        var language = Typed.Asked();
        var command = new Command("look", "Ask what is owed, and keep the answers beside the job.") { job, number, answer, by, language };
        command.SetAction(parsed =>
        {
            var opened = Opened.Find(parsed.GetValue(job), "look", parsed.GetValue(rules), terminal);
            var looking = new Looking(
                opened.Room, opened.Log, new TerminalTalk(terminal), parsed.GetValue(by), parsed.GetValue(language) ?? Typed.English);
            if (parsed.GetValue(number) is not { } asked)
            {
                looking.All();
            }
            else if (!looking.Number(asked, parsed.GetValue(answer)))
            {
                return (int)ExitCode.TypedWrong;
            }

            return (int)opened.Code;
        });
        return command;
    }
}
