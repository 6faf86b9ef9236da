using System.CommandLine;
using WetCheck.Cli.Files;
using WetCheck.Cli.Text;
using WetCheck.Reporting;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck punch</c>: the list to keep or to give.</summary>
internal static class PunchCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var (job, into, force, format) = (Typed.Job(), Typed.Into(".html to print, .md, .json, .txt"), Typed.Force(), Typed.Format(Typed.Formats));
        var (reader, language) = (Typed.For(), Typed.Language());
        var command = new Command("punch", "Write the list to keep or give: a message, or a page to print.") { job, reader, language, into, force, format };
        command.SetAction(parsed =>
        {
            var target = parsed.GetValue(into);
            var written = parsed.GetValue(format) ?? Lists.FormatOf(target);
            var file = JobFile.Find(parsed.GetValue(job), "punch", terminal);
            var held = Held.Of(file, BookHere.LoadFor(file, parsed.GetValue(rules), terminal), [], terminal);
            var whom = Readers.Of(parsed.GetValue(reader));
            var text = Lists.Punch(held.Walk, written, whom, parsed.GetValue(language) ?? Readers.Language(whom), terminal);
            if (target is null)
            {
                terminal.Out.Write(text);
            }
            else
            {
                new ListFile(file, held.Walk, parsed.GetValue(force), terminal).Write(target, text);
            }

            return (int)held.Code;
        });
        return command;
    }
}
