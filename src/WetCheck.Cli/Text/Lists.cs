using System.Globalization;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Cli.Text;

/// <summary>A walk in the form that was asked for.</summary>
internal static class Lists
{
    private const string English = Languages.English;

    /// <summary>"Wed Nov 25, 4:05 pm", the same on every machine; "2026-11-25, 16:05" beside other words than English.</summary>
    public static string Now(Terminal terminal, string language = English)
    {
        var now = terminal.Clock.GetLocalNow();
        return language != English ? now.ToString("yyyy-MM-dd, HH:mm", CultureInfo.InvariantCulture) : now.ToString("ddd MMM d, h:mm ", CultureInfo.InvariantCulture) + (now.Hour < 12 ? "am" : "pm");
    }

    public static string Screen(Walk walk, string format, bool all, Terminal terminal, string language = English) =>
        format == "text" ? ScreenText.Of(Listing.Of(walk, language, Now(terminal, language)), all) : Punch(walk, format, Reader.Setter, English, terminal);

    /// <param name="language">Of JSON there is one: it is for programs.</param>
    public static string Punch(Walk walk, string format, Reader reader, string language, Terminal terminal)
    {
        var now = Now(terminal, language);
        try
        {
            return format switch
            {
                "html" => PunchPage.Html(walk, language, now, reader),
                "md" => PunchPage.Markdown(walk, language, now, reader),
                "json" => JsonList.Of(walk, English, Now(terminal)),
                _ => PunchPage.Message(walk, language, now, reader),
            };
        }
        catch (TemplateException fault)
        {
            throw new Halt(ExitCode.Unreadable, fault.Message);
        }
    }

    public static string Sheet(Job job, RuleBook book, string language)
    {
        try
        {
            return AnswerSheet.Html(job, book, language);
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
