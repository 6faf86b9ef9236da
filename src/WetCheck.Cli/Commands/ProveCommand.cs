using System.CommandLine;
using WetCheck.Cli.Files;
using WetCheck.Cli.Help;
using WetCheck.Model;

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
            var (book, cases) = BookHere.LoadWithCases(folder, terminal);
            var chosen = asked is null ? book.Rules : [.. book.Rules.Where(rule => IsOf(rule.Id, asked))];
            return chosen.Count == 0
                ? throw new Halt(ExitCode.TypedWrong, NoCases(asked ?? "any rule", cases))
                : (int)Run(chosen, new BookProof(BookHere.Ready(book), cases), folder, terminal);
        });
        return command;
    }

    private static ExitCode Run(IReadOnlyList<Rule> rules, BookProof book, string? folder, Terminal terminal)
    {
        var (cases, failed, faults) = (0, 0, 0);
        foreach (var proof in rules.Select(book.Prove))
        {
            cases += proof.Cases.Count;
            failed += proof.Cases.Count(one => !one.Holds);
            faults += proof.Faults.Count;
            foreach (var one in proof.Cases.Where(one => !one.Holds))
            {
                Write(one.Case.At, one.Misses.Prepend(one.Case.Name), terminal);
            }

            foreach (var at in proof.Faults.GroupBy(fault => fault.At))
            {
                Write(BookHere.In(folder, at.Key), at.Select(fault => fault.Says), terminal);
            }
        }

        terminal.Out.WriteLine($"{cases - failed} cases hold, {failed} do not." + (faults > 0 ? $" {faults} wanting in the rules." : ""));
        return failed + faults == 0 ? ExitCode.NothingOwed : ExitCode.ToFix;
    }

    private static void Write(At at, IEnumerable<string> lines, Terminal terminal)
    {
        terminal.Out.WriteLine(at.ToString());
        foreach (var line in lines)
        {
            terminal.Out.WriteLine($"    {line}");
        }
    }

    private static string NoCases(string asked, IEnumerable<RuleCase> cases) => $"The book has no cases of {asked}."
        + (Nearest.Of(asked, cases.SelectMany(one => new[] { one.Rule, one.Rule.Split('/')[0] }).Distinct()) is { } near ? $" Nearest: {near}." : "")
        + "\n    wetcheck rules   lists its rules.";

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

    private static bool IsOf(string rule, string asked) => rule == asked || rule.StartsWith(asked + "/", StringComparison.Ordinal);
}
