using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace WetCheck.Cli.Help;

/// <summary>The usual help with lines that can be typed as they stand below it.</summary>
internal sealed class HelpWithExamples(HelpAction inner, IReadOnlyDictionary<string, string[]> examples) : SynchronousCommandLineAction
{
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        var command = parseResult.CommandResult.Command;
        if (command is RootCommand)
        {
            First(parseResult.InvocationConfiguration.Output);
        }

        var code = inner.Invoke(parseResult);
        if (examples.TryGetValue(Named(command), out var lines) || examples.TryGetValue(command.Name, out lines))
        {
            var output = parseResult.InvocationConfiguration.Output;
            output.WriteLine("Examples:");
            foreach (var line in lines)
            {
                output.WriteLine("  " + line);
            }

            output.WriteLine();
        }

        return code;
    }

    /// <summary>With the command it stands under, which tells <c>job new</c> from <c>rules new</c>.</summary>
    private static string Named(Command command) => command is RootCommand ? "wetcheck"
        : $"{command.Parents.First().Name} {command.Name}";

    /// <summary>Most people need these three and nothing else.</summary>
    private static void First(TextWriter output)
    {
        foreach (var line in Examples.First)
        {
            output.WriteLine(line);
        }

        output.WriteLine();
    }
}
