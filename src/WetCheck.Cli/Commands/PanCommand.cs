using System.CommandLine;
using WetCheck.Cli.Files;
using WetCheck.Cli.Text;
using WetCheck.Reporting;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck pan</c>: the sheets of a floor, its falls first.</summary>
internal static class PanCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var (job, sheet, changed, format, language) = (Typed.Job(), Typed.Sheet([.. PanSheet.All.Select(one => one.Name)]), Typed.If(), Typed.Format("text", "json"), Typed.Asked());
        var command = new Command("pan", "Work out the falls of a shower floor: rim, slopes, where the drain may stand.") { job, sheet, changed, format, language };
        command.SetAction(parsed =>
        {
            var file = JobFile.Find(parsed.GetValue(job), "pan", terminal);
            var walk = Held.Of(file, BookHere.LoadFor(file, parsed.GetValue(rules), terminal), parsed.GetValue(changed) ?? [], terminal).Walk;
            var floor = FloorSheets.Of(walk.Job, walk.Book);
            var asks = PanSheet.Named(parsed.GetValue(sheet));
            var asked = parsed.GetValue(language) ?? Languages.English;
            var now = Lists.Now(terminal, asked);
            terminal.Out.Write(parsed.GetValue(format) == "json" ? PanJson.Of(floor, walk, asked, now) : asks.Text(floor, walk, asked, now));
            return (int)ExitCodes.Weightiest(ExitCodes.Of(walk.Problems), asks.Code(floor));
        });
        return command;
    }
}
