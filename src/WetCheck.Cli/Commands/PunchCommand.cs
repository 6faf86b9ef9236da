using System.CommandLine;
using WetCheck.Cli.Files;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck punch</c>: the list to keep or to give.</summary>
internal static class PunchCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var (job, into, force, format) =
            (Typed.Job(), Typed.Into(".html to print, .md, .json, .txt"), Typed.Force(), Typed.Format(Typed.Formats));
        var (reader, language) = (Typed.For(), Typed.Language());
        var command = new Command("punch", "Write the list to keep or give: a message, or a page to print.")
        {
            job, reader, language, into, force, format,
        };
        command.SetAction(parsed =>
        {
            var target = parsed.GetValue(into);
            var form = Typed.Form(parsed.GetValue(format) ?? FormatOf(target));
            var opened = Opened.Find(parsed.GetValue(job), "punch", parsed.GetValue(rules), terminal);
            var text = opened.Room.List(form, Typed.Whom(parsed.GetValue(reader)), parsed.GetValue(language), terminal.Now);
            if (target is null)
            {
                terminal.Out.Write(text);
            }
            else
            {
                new ListFile(opened, parsed.GetValue(force), terminal).Write(target, text);
            }

            return (int)opened.Code;
        });
        return command;
    }

    /// <summary>The ending of a file says how it is written; without a file it is the message.</summary>
    private static string FormatOf(string? file) => Path.GetExtension(file)?.ToLowerInvariant() switch
    {
        null or ".txt" => "text",
        ".html" or ".htm" => "html",
        ".md" => "md",
        ".json" => "json",
        _ => throw new Halt(ExitCode.TypedWrong, $"How is {file} to be written? End it in .html, .md, .json or .txt, or add --format."),
    };
}
