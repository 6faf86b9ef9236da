using System.CommandLine;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck pan</c>: the sheets of a floor, its falls first.</summary>
internal static class PanCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var (job, sheet, changed) = (Typed.Job(), Typed.Sheet(Room.FloorSheets), Typed.If());
        var (format, language) = (Typed.Format("text", "json"), Typed.Asked());
        var command = new Command("pan", "Work out the falls of a shower floor: rim, slopes, where the drain may stand.")
        {
            job, sheet, changed, format, language,
        };
        command.SetAction(parsed =>
        {
            var opened = Opened.Find(parsed.GetValue(job), "pan", parsed.GetValue(rules), terminal, parsed.GetValue(changed) ?? []);
            var (text, state) = opened.Room.Floor(
                parsed.GetValue(sheet), parsed.GetValue(format) == "json", parsed.GetValue(language) ?? Typed.English, terminal.Now);
            terminal.Out.Write(text);
            return (int)ExitCodes.Weightiest(opened.ReadCode, ExitCodes.Of(state));
        });
        return command;
    }
}
