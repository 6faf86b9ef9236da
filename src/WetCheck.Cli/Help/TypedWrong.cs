using System.CommandLine;
using System.CommandLine.Parsing;

namespace WetCheck.Cli.Help;

/// <summary>Says in our own words what was typed wrong, and what to type.</summary>
public static class TypedWrong
{
    public static string Say(ParseResult parsed)
    {
        var command = parsed.CommandResult.Command;
        var line = LineOf(parsed.CommandResult);
        if (parsed.UnmatchedTokens is [var stray, ..])
        {
            return OfStray(stray, command, line) + Hint(line);
        }

        if (parsed.Errors.Select(e => e.SymbolResult).OfType<OptionResult>().FirstOrDefault(option => option.Tokens.Count == 0) is { } bare)
        {
            return $"{bare.Option.Name} needs {bare.Option.HelpName} after it." + Hint(line);
        }

        if (parsed.Errors.Any(e => e.SymbolResult is CommandResult) && command.Subcommands.Count > 0)
        {
            return $"{line} needs one more word: {List(command.Subcommands.Select(c => c.Name))}." + Hint(line);
        }

        return parsed.Errors[0].Message + Hint(line);
    }

    private static string OfStray(string stray, Command command, string line)
    {
        if (stray.StartsWith('-'))
        {
            var options = command.Options.Concat(Recursive(command)).Select(option => option.Name).Distinct().Order(StringComparer.Ordinal).ToList();
            return $"{line} has no {stray}." + (Nearest.Of(stray, options) is { } near ? $" Nearest: {near}." : "") + $" It has {List(options)}.";
        }

        if (command.Subcommands.Count > 0 && command.Arguments.Count == 0)
        {
            var names = command.Subcommands.Select(c => c.Name).ToList();
            return $"There is no command \"{stray}\"." + (Nearest.Of(stray, names) is { } near ? $" Nearest: {near}." : "") + $" There is {List(names)}.";
        }

        return $"\"{stray}\" is one word too many. A name with spaces goes in quotes.";
    }

    private static IEnumerable<Option> Recursive(Command command) =>
        command.Parents.OfType<Command>().SelectMany(above => above.Options.Where(option => option.Recursive).Concat(Recursive(above)));

    /// <summary>The command as it is typed: <c>wetcheck rules prove</c>.</summary>
    private static string LineOf(CommandResult result) =>
        result.Parent is CommandResult above ? $"{LineOf(above)} {result.Command.Name}" : "wetcheck";

    private static string Hint(string line) => $"\n    {line} -h   shows what can be typed.";

    private static string List(IEnumerable<string> words) => string.Join(", ", words);
}
