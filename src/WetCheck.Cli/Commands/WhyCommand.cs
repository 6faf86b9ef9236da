using System.CommandLine;
using System.Globalization;
using WetCheck.Cli.Files;
using WetCheck.Cli.Help;
using WetCheck.Cli.Text;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck why</c>: what stands behind one line of a list, or behind one rule.</summary>
internal static class WhyCommand
{
    public static Command Build(Option<string?> rules, Terminal terminal)
    {
        var first = new Argument<string>("JOB") { Description = "A job file, or its name. Or a rule alone: liner/turn-up, 214." };
        var number = new Argument<string?>("NUMBER") { Arity = ArgumentArity.ZeroOrOne, Description = "A number of the list: 214-D." };
        var command = new Command("why", "Explain one line of a list, or one rule.") { first, number };
        command.SetAction(parsed =>
        {
            var book = parsed.GetValue(rules);
            return (int)(parsed.GetValue(number) is { } asked
                ? OfEntry(JobFile.Find(parsed.GetValue(first), "why", terminal), asked, book, terminal)
                : OfRule(parsed.GetValue(first)!, BookHere.Load(book, terminal), terminal));
        });
        return command;
    }

    private static ExitCode OfEntry(JobFile file, string asked, string? folder, Terminal terminal)
    {
        var held = Held.Of(file, BookHere.LoadFor(file, folder, terminal), [], terminal);
        terminal.Out.Write(Text(held.Walk, asked, terminal));
        return ExitCodes.Of(held.Walk.Problems);
    }

    private static string Text(Walk walk, string asked, Terminal terminal) =>
        Numbered.Find(walk, asked) is { } entry ? Lists.Why(walk, entry, terminal)
        : Numbered.Shown(walk, asked) is { } shown ? WhyText.Of(walk, shown, Languages.English, Lists.Now(terminal, Languages.English))
        : walk.Book.Causes.Any(cause => Numbered.Is(cause.Number, asked)) && OldWorkReading.Of(walk.Job, walk.Book).Causes.FirstOrDefault(cause => Numbered.Is(cause.Cause.Number, asked)) is { } found
            ? WhyCause.Of(found, walk, Languages.English, Lists.Now(terminal, Languages.English))
        : throw new Halt(ExitCode.TypedWrong, Numbered.NotFound(walk, asked));

    private static ExitCode OfRule(string asked, RuleBook book, Terminal terminal)
    {
        var rule = int.TryParse(asked, CultureInfo.InvariantCulture, out var number) ? book.Rule(number) : book.Rule(asked);
        terminal.Out.Write(Lists.Why(book, rule ?? throw new Halt(ExitCode.TypedWrong, NoRule(asked, book))));
        return ExitCode.NothingOwed;
    }

    private static string NoRule(string asked, RuleBook book) =>
        $"The book has no rule \"{asked}\"." + (Nearest.Of(asked, book.Rules.SelectMany(rule => new[] { rule.Id, rule.Number.ToString(CultureInfo.InvariantCulture) })) is { } near ? $" Nearest: {near}." : "")
        + "\n    wetcheck rules             lists them all."
        + "\n    wetcheck why JOB NUMBER    explains a line of a list.";
}
