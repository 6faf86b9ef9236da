using System.CommandLine;
using WetCheck.Cli.Asking;
using WetCheck.Cli.Files;
using WetCheck.Cli.Text;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck job new</c>: five questions, then a file, a sheet to write on, and the first list.</summary>
internal static class NewJobCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var name = new Argument<string?>("NAME") { Arity = ArgumentArity.ZeroOrOne, Description = "What the job is called. Without it: asked." };
        var language = Typed.Asked();
        var command = new Command("new", "Ask five questions, write a job file to fill in, and walk it.") { name, language };
        command.SetAction(parsed => (int)Start(
            parsed.GetValue(name),
            BookHere.Load(parsed.GetValue(rules), terminal),
            parsed.GetValue(language) ?? Languages.English,
            terminal));
        return command;
    }

    private static ExitCode Start(string? typed, RuleBook book, string language, Terminal terminal)
    {
        var questions = new FiveQuestions(book, language, terminal);
        terminal.Out.WriteLine(questions.Words.Before);
        var name = NewName.Of(typed ?? questions.Name());
        name.MustBeFree(terminal);

        var job = questions.All(name.Job);
        NewFile.Write(name.File, StartFile.Of(job, book, language), terminal);
        NewFile.Write(name.Sheet, Lists.Sheet(job, book, language), terminal);
        terminal.Out.WriteLine();
        terminal.Out.WriteLine(questions.Words.Written(name.File, name.Sheet));
        terminal.Out.WriteLine();

        var held = Held.Of(JobFile.Find(name.File, "walk", terminal), book, [], terminal);
        terminal.Out.Write(Lists.Screen(held.Walk, "text", all: false, terminal, language));
        return held.Code;
    }
}
