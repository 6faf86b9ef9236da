using System.Globalization;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Cli.Text;

/// <summary>A walk in the form that was asked for.</summary>
internal static class Lists
{
    private const string English = "en";

    /// <summary>"Wed Nov 25, 4:05 pm", the same on every machine.</summary>
    public static string Now(Terminal terminal)
    {
        var now = terminal.Clock.GetLocalNow();
        return now.ToString("ddd MMM d, h:mm ", CultureInfo.InvariantCulture) + (now.Hour < 12 ? "am" : "pm");
    }

    public static string Screen(Walk walk, string format, bool all, Terminal terminal) =>
        format == "text" ? ScreenText.Of(Listing.Of(walk, English, Now(terminal)), all) : Punch(walk, format, terminal);

    public static string Punch(Walk walk, string format, Terminal terminal)
    {
        try
        {
            return format switch
            {
                "html" => PunchPage.Html(walk, English, Now(terminal)),
                "md" => PunchPage.Markdown(walk, English, Now(terminal)),
                "json" => JsonList.Of(walk, English, Now(terminal)),
                _ => PunchPage.Message(walk, English, Now(terminal)),
            };
        }
        catch (TemplateException fault)
        {
            throw new Halt(ExitCode.Unreadable, fault.Message);
        }
    }

    public static string Why(Walk walk, Entry entry, Terminal terminal) => WhyText.Of(walk, entry, English, Now(terminal));

    public static string Why(RuleBook book, Rule rule) => WhyText.Of(book, rule, English);

    /// <summary>The ending of a file says how it is written; without a file it is the message.</summary>
    public static string FormatOf(string? file) => System.IO.Path.GetExtension(file)?.ToLowerInvariant() switch
    {
        null or ".txt" => "text",
        ".html" or ".htm" => "html",
        ".md" => "md",
        ".json" => "json",
        _ => throw new Halt(ExitCode.TypedWrong, $"How is {file} to be written? End it in .html, .md, .json or .txt, or add --format."),
    };
}
