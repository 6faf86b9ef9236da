using System.CommandLine;
using WetCheck.Cli.Files;
using WetCheck.Cli.Text;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck pan</c>: the falls of a floor before it is built.</summary>
internal static class PanCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var (job, changed, format, language) = (Typed.Job(), Typed.If(), Typed.Format("text", "json"), Typed.Asked());
        var command = new Command("pan", "Work out the falls of a shower floor: rim, slopes, where the drain may stand.") { job, changed, format, language };
        command.SetAction(parsed =>
        {
            var file = JobFile.Find(parsed.GetValue(job), "pan", terminal);
            var walk = Held.Of(file, BookHere.LoadFor(file, parsed.GetValue(rules), terminal), parsed.GetValue(changed) ?? [], terminal).Walk;
            var pan = Falls.Of(walk.Job, walk.Book);
            var asked = parsed.GetValue(language) ?? Languages.English;
            var now = Lists.Now(terminal, asked);
            terminal.Out.Write(parsed.GetValue(format) == "json" ? PanJson.Of(pan, walk, asked, now) : PanText.Of(pan, walk, asked, now));
            return (int)ExitCodes.Weightiest(ExitCodes.Of(walk.Problems), CodeOf(pan));
        });
        return command;
    }

    /// <summary>To fix where nothing fits; unfinished where something is not known, or fits by one reading and not by another.</summary>
    private static ExitCode CodeOf(PanReport pan) =>
        pan.Cases.Count > 0 && pan.Cases.All(one => one.Feasible == Tri.No) ? ExitCode.ToFix
        : pan.Missing.Count > 0 || pan.Cases.Count == 0 || pan.Cases.Any(one => one.Feasible != Tri.Yes || one.Mark is null) ? ExitCode.Unfinished
        : ExitCode.NothingOwed;
}
