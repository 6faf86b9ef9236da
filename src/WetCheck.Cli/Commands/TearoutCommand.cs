using System.CommandLine;
using WetCheck.Cli.Files;
using WetCheck.Cli.Text;
using WetCheck.Reporting;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck tearout</c>: what old work's look accounts for, and what to test and open.</summary>
internal static class TearoutCommand
{
    private const string Tests = "tests";

    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var (job, sheet, changed, format, language) = (Typed.Job(), Typed.Sheet(["causes", Tests]), Typed.If(), Typed.Format("text", "json"), Typed.Asked());
        var command = new Command("tearout", "Read old work as it is opened: what accounts for it, what to open next.") { job, sheet, changed, format, language };
        command.SetAction(parsed =>
        {
            var file = JobFile.Find(parsed.GetValue(job), "tearout", terminal);
            var walk = Held.Of(file, BookHere.LoadFor(file, parsed.GetValue(rules), terminal), parsed.GetValue(changed) ?? [], terminal).Walk;
            var report = OldWorkReading.Of(walk.Job, walk.Book);
            var asked = parsed.GetValue(language) ?? Languages.English;
            var now = Lists.Now(terminal, asked);
            terminal.Out.Write(parsed.GetValue(format) == "json" ? TearoutJson.Of(report, walk, asked, now)
                : parsed.GetValue(sheet) == Tests ? TestsText.Of(report, walk, asked, now)
                : TearoutText.Of(report, walk, asked, now));
            return (int)ExitCodes.Of(walk.Problems);
        });
        return command;
    }
}
