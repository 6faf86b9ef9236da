using System.CommandLine;

namespace WetCheck.Cli.Commands;

/// <summary>Words that mean the same after several commands, with one help text each.</summary>
internal static class Typed
{
    /// <summary>The language of what is not asked for in another.</summary>
    public const string English = "en";

    public static readonly string[] Formats = ["text", "json", "md", "html"];

    private static readonly string[] s_readers = ["setter", "owner", "helper"];

    /// <param name="format">One of <see cref="Formats"/>.</param>
    public static ListForm Form(string format) => format switch
    {
        "json" => ListForm.Json,
        "md" => ListForm.Markdown,
        "html" => ListForm.Html,
        _ => ListForm.Message,
    };

    /// <param name="reader">As after <c>--for</c>; null is the setter.</param>
    public static ForWhom Whom(string? reader) => (ForWhom)Math.Max(0, Array.IndexOf(s_readers, reader));

    public static Argument<string?> Job() => new("JOB")
    {
        Arity = ArgumentArity.ZeroOrOne,
        Description = "A job file, or its name: juniper is juniper.job.yaml here. Without it: the one job of this folder.",
    };

    public static Option<string?> Rules() => new("--rules")
    {
        HelpName = "DIR",
        Recursive = true,
        Description = "A rule book to use instead of the built-in one.",
    };

    public static Option<string?> Format(params string[] formats) => OneOf("--format", "How it is written.", formats);

    public static Option<string?> Language() => OneOf("--lang", "In English, in Spanish (a draft), or both.", [.. Room.ListLanguages]);

    /// <summary>One at a time: a question is asked once.</summary>
    public static Option<string?> Asked() => OneOf("--lang", "In English, or in Spanish (a draft).", [.. Room.AskedLanguages]);

    public static Option<string?> Drawing(IReadOnlyList<string> drawings) =>
        OneOf("--drawing", $"Which drawing; without it: {drawings[0]}.", [.. drawings]);

    public static Option<string?> Sheet(IReadOnlyList<string> sheets) =>
        OneOf("--sheet", $"Which sheet; without it: {sheets[0]}. JSON has all.", [.. sheets]);

    public static Option<string?> For() => OneOf("--for", "Whom it is for: the setter, the owner, or a helper.", s_readers);

    public static Option<bool> All() => new("--all") { Description = "Also what is OK, what comes later, and every look." };

    public static Option<string?> Stage() => new("--stage")
    {
        HelpName = "STOP",
        Description = "Walk as if at another stop; the file stays as it is.",
    };

    public static Option<string[]> If() => new("--if")
    {
        HelpName = "'LINE: VALUE'",
        Arity = ArgumentArity.OneOrMore,
        AllowMultipleArgumentsPerToken = false,
        Description = "Walk as if this line were written so; the file stays as it is. May be given again.",
    };

    /// <param name="endings">What the file may end in.</param>
    public static Option<string?> Into(string endings) => new("--output", "-o")
    {
        HelpName = "FILE",
        Description = $"Write into a file: {endings}.",
    };

    public static Option<bool> Force() => new("--force")
    {
        Description = "Replace FILE even where it is no earlier list. A job and its log are never replaced.",
    };

    private static Option<string?> OneOf(string name, string description, string[] words)
    {
        var option = new Option<string?>(name) { HelpName = string.Join('|', words), Description = description };
        option.CompletionSources.Add(words);
        option.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: var typed }] && !words.Contains(typed))
            {
                result.AddError($"{name} takes {string.Join(", ", words)}; \"{typed}\" is none of them.");
            }
        });

        return option;
    }
}
