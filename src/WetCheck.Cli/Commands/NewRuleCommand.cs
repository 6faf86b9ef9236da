using System.CommandLine;
using System.Text.RegularExpressions;
using WetCheck.Cli.Files;
using WetCheck.Cli.Help;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck rules new</c>: the two files of a rule, to be filled in.</summary>
internal static partial class NewRuleCommand
{
    private const string Here = "rules";

    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var name = new Argument<string>("CHAPTER/NAME") { Description = "Its chapter and its name: local/curb-width." };
        var command = new Command("new", "Write the two files of a new rule, to be filled in.") { name };
        command.SetAction(parsed => (int)Write(parsed.GetValue(name)!, parsed.GetValue(rules) ?? Here, terminal));
        return command;
    }

    private static ExitCode Write(string id, string folder, Terminal terminal)
    {
        if (!Id().IsMatch(id))
        {
            throw new Halt(ExitCode.TypedWrong, "A rule is named by its chapter and its name, in small letters:\n    wetcheck rules new local/curb-width");
        }

        var book = BookHere.Load(folder, terminal);
        var number = RuleStart.NextNumber(book, id.Split('/')[0]) ?? throw new Halt(ExitCode.TypedWrong, NoChapter(id.Split('/')[0], book));
        var path = System.IO.Path.Combine(folder, id);
        var (rule, cases) = RuleStart.Files(book, id, number);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(terminal.FullPath(path))!);
        NewFile.Write(path + ".yaml", rule, terminal);
        NewFile.Write(path + ".cases.yaml", cases, terminal);
        terminal.Out.WriteLine($"Written: {path}.yaml and {path}.cases.yaml, number {number}. Fill them in, then:");
        terminal.Out.WriteLine($"    wetcheck rules prove {id} --rules {folder}");
        return ExitCode.NothingOwed;
    }

    private static string NoChapter(string typed, RuleBook book)
    {
        var chapters = book.Rules.Select(rule => rule.Chapter).Append("local").Distinct().Order(StringComparer.Ordinal).ToList();
        return $"The book has no chapter \"{typed}\"." + (Nearest.Of(typed, chapters) is { } near ? $" Nearest: {near}." : "")
            + $"\n    Its chapters: {string.Join(", ", chapters)}";
    }

    [GeneratedRegex("^[a-z][a-z0-9-]*/[a-z][a-z0-9-]*$")]
    private static partial Regex Id();
}
