using System.CommandLine;
using System.CommandLine.Parsing;

namespace WetCheck.Cli.Help;

/// <summary>Says in our own words what was typed wrong, and what to type.</summary>
internal static class TypedWrong
{
    /// <summary>Null: nothing is wrong.</summary>
    public static string? Find(ParseResult parsed)
    {
        var line = LineOf(parsed.CommandResult);
        return Fault(parsed, line) is { } fault ? $"{fault}\n    {line} -h   shows what can be typed." : null;
    }

    private static string? Fault(ParseResult parsed, string line)
    {
        var command = parsed.CommandResult.Command;
        if (parsed.CommandResult.Children.OfType<ArgumentResult>().SelectMany(argument => argument.Tokens).Select(token => token.Value)
            .Concat(parsed.UnmatchedTokens).FirstOrDefault(word => word.StartsWith('-')) is { } dashed)
        {
            var options = OptionsOf(command).Select(option => option.Name).Distinct().Order(StringComparer.Ordinal).ToList();
            return $"{line} has no {dashed}. {Choose(dashed, options)}";
        }

        return parsed.Errors is not [var first, ..] ? null
            : parsed.UnmatchedTokens is [var stray, ..] ? OfStray(stray, command)
            : first.SymbolResult switch
            {
                OptionResult { Tokens.Count: 0, Option: var option } => $"{option.Name} needs {option.HelpName} after it.",
                ArgumentResult { Tokens.Count: 0, Argument: var argument } => $"{line} needs {argument.Name}. {argument.Description}",
                CommandResult when command.Subcommands.Count > 0 =>
                    $"{line} needs one more word: {List(command.Subcommands.Select(c => c.Name))}.",
                _ => first.Message,
            };
    }

    private static string OfStray(string stray, Command command) => command.Subcommands.Count > 0 && command.Arguments.Count == 0
        ? $"There is no command \"{stray}\". {Choose(stray, [.. command.Subcommands.Select(c => c.Name)])}"
        : $"\"{stray}\" is one word too many. A name with spaces goes in quotes.";

    private static string Choose(string typed, List<string> words) => Nearest.Of(typed, words) switch
    {
        null => $"There is {List(words)}.",
        var near when words.Count == 1 => $"Nearest: {near}.",
        var near => $"Nearest: {near}. Also: {List(words.Where(word => word != near))}.",
    };

    private static IEnumerable<Option> OptionsOf(Command command) =>
        command.Options.Concat(command.Parents.OfType<Command>().SelectMany(OptionsOf).Where(option => option.Recursive));

    /// <summary>The command as it is typed: <c>wetcheck rules prove</c>.</summary>
    private static string LineOf(CommandResult result) =>
        result.Parent is CommandResult above ? $"{LineOf(above)} {result.Command.Name}" : "wetcheck";

    private static string List(IEnumerable<string> words) => string.Join(", ", words);
}
