using System.CommandLine;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck tearout</c>: what old work's look accounts for, and what to test and open.</summary>
internal static class TearoutCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var (job, sheet, changed) = (Typed.Job(), Typed.Sheet(Room.OldWorkSheets), Typed.If());
        var (format, language) = (Typed.Format("text", "json"), Typed.Asked());
        var command = new Command("tearout", "Read old work as it is opened: what accounts for it, what to open next.")
        {
            job, sheet, changed, format, language,
        };
        command.SetAction(parsed =>
        {
            var opened = Opened.Find(parsed.GetValue(job), "tearout", parsed.GetValue(rules), terminal, parsed.GetValue(changed) ?? []);
            terminal.Out.Write(opened.Room.OldWork(
                parsed.GetValue(sheet), parsed.GetValue(format) == "json", parsed.GetValue(language) ?? Typed.English, terminal.Now));
            return (int)opened.ReadCode;
        });
        return command;
    }
}
