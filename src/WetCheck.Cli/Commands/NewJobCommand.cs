using System.CommandLine;
using WetCheck.Cli.Files;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck job new</c>: five questions, then a file, a sheet to write on, and the first list.</summary>
internal static class NewJobCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var name = new Argument<string?>("NAME")
        {
            Arity = ArgumentArity.ZeroOrOne,
            Description = "What the job is called. Without it: asked.",
        };
        var language = Typed.Asked();
        var command = new Command("new", "Ask five questions, write a job file to fill in, and walk it.") { name, language };
        command.SetAction(parsed => (int)Start(
            parsed.GetValue(name),
            BookHere.Load(parsed.GetValue(rules), terminal),
            parsed.GetValue(language) ?? Typed.English,
            terminal));
        return command;
    }

    private static ExitCode Start(string? typed, Book book, string language, Terminal terminal)
    {
        var room = new NewRoom(book, language, new TerminalTalk(terminal));
        var name = NewName.Of(typed ?? room.AskName());
        name.MustBeFree(terminal);

        room.Ask(name.Job);
        NewFile.Write(name.File, room.File, terminal);
        NewFile.Write(name.Sheet, room.Sheet, terminal);
        terminal.Out.WriteLine();
        terminal.Out.WriteLine(room.Written(name.File, name.Sheet));
        terminal.Out.WriteLine();

        var opened = Opened.Read(JobFile.Find(name.File, "walk", terminal), book, terminal);
        terminal.Out.Write(opened.Room.Screen(language, terminal.Now));
        return opened.Code;
    }
}
