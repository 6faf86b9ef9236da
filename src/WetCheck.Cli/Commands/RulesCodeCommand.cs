using System.CommandLine;
using WetCheck.Cli.Files;
using WetCheck.Cli.Help;
using WetCheck.Reporting;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck rules code</c>: the codes that the book knows.</summary>
internal static class RulesCodeCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var compare = new Option<string[]>("--compare")
        {
            HelpName = "A B",
            Arity = new ArgumentArity(2, 2),
            AllowMultipleArgumentsPerToken = true,
            Description = "What differs between two code families.",
        };
        var job = new Argument<string?>("JOB")
        {
            Arity = ArgumentArity.ZeroOrOne,
            Description = "A job: what its local changes did to the book.",
        };
        var command = new Command("code", "List the codes of the book, and what differs between two.") { job, compare };
        command.SetAction(parsed =>
        {
            var folder = parsed.GetValue(rules);
            var book = BookHere.Load(folder, terminal);
            if (parsed.GetValue(compare) is { Length: 2 } two)
            {
                terminal.Out.Write(CodeList.Compare(book, Family(two[0], book), Family(two[1], book)));
            }
            else if (parsed.GetValue(job) is { } name)
            {
                terminal.Out.Write(CodeList.Local(book, BookHere.LoadFor(JobFile.Find(name, "rules code", terminal), folder, terminal)));
            }
            else
            {
                terminal.Out.Write(CodeList.Of(book));
            }

            return (int)ExitCode.NothingOwed;
        });
        return command;
    }

    private static string Family(string typed, Model.RuleBook book)
    {
        var families = book.Vocabulary.Disciplines.SelectMany(discipline => discipline.Families).Select(family => family.Name).Distinct().ToList();
        return families.Find(family => string.Equals(family, typed, StringComparison.OrdinalIgnoreCase))
            ?? throw new Halt(ExitCode.TypedWrong, $"The book has no code \"{typed}\"." + (Nearest.Of(typed, families) is { } near ? $" Nearest: {near}." : "")
                + "\n    wetcheck rules code   lists its codes.");
    }
}
