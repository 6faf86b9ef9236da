using System.CommandLine;
using WetCheck.Cli.Files;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck rules prove</c>: hold rules to all that a rule must be.</summary>
internal static class ProveCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var which = new Argument<string?>("WHICH")
        {
            Arity = ArgumentArity.ZeroOrOne,
            Description = "A chapter, a rule, a file of it, or the folder of a whole rule book. Without it: every rule.",
        };
        var command = new Command("prove", "Hold rules to all that a rule must be: cases, limits, words, sources.") { which };
        command.SetAction(parsed =>
        {
            var (folder, asked) = Which(parsed.GetValue(rules), parsed.GetValue(which), terminal);
            var (text, holds) = BookHere.Load(folder, terminal).Prove(asked);
            terminal.Out.Write(text);
            return (int)(holds ? ExitCode.NothingOwed : ExitCode.ToFix);
        });
        return command;
    }

    /// <summary>A folder with a book in it is the book; anything else names rules.</summary>
    private static (string? Folder, string? Asked) Which(string? folder, string? which, Terminal terminal) => which switch
    {
        null => (folder, null),
        _ when File.Exists(System.IO.Path.Combine(terminal.FullPath(which), "book.yaml")) => (which, null),
        _ => (folder, RuleName(which)),
    };

    /// <summary><c>liner/turn-up</c> of <c>rules/liner/turn-up.cases.yaml</c>.</summary>
    private static string RuleName(string which)
    {
        var name = which.Replace('\\', '/').Trim('/');
        name = name[(name.LastIndexOf("rules/", StringComparison.Ordinal) is var at and >= 0 ? at + "rules/".Length : 0)..];
        foreach (var ending in (string[])[".yaml", ".cases"])
        {
            name = name.EndsWith(ending, StringComparison.Ordinal) ? name[..^ending.Length] : name;
        }

        return name;
    }
}
