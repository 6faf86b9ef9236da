using System.CommandLine;
using WetCheck.Cli.Files;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck rules new</c>: the two files of a rule, to be filled in.</summary>
internal static class NewRuleCommand
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
        var (number, rule, cases) = BookHere.Load(folder, terminal).NewRule(id);
        var path = Path.Combine(folder, id);
        Directory.CreateDirectory(Path.GetDirectoryName(terminal.FullPath(path))!);
        NewFile.Write(path + ".yaml", rule, terminal);
        NewFile.Write(path + ".cases.yaml", cases, terminal);
        terminal.Out.WriteLine($"Written: {path}.yaml and {path}.cases.yaml, number {number}. Fill them in, then:");
        terminal.Out.WriteLine($"    wetcheck rules prove {id} --rules {folder}");
        return ExitCode.NothingOwed;
    }
}
