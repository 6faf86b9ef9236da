using WetCheck.Cli.Files;
using WetCheck.Cli.Text;
using WetCheck.Model;

namespace WetCheck.Cli.Commands;

/// <summary>One job held against one book, as the words typed ask.</summary>
internal sealed record Held(Walk Walk, IReadOnlyList<Problem> Problems)
{
    public ExitCode Code => ExitCodes.Weightiest(ExitCodes.Of(Problems), ExitCodes.Of(Walk.Verdict));

    /// <param name="changes">Lines to read as if they stood in the file.</param>
    public static Held Of(JobFile file, RuleBook book, IReadOnlyList<string> changes, Terminal terminal)
    {
        var inspection = Inspection.Of(file.Text, file.Shown, book, changes);
        ProblemText.Write(inspection.Problems, terminal.Err);
        return inspection.Walk is { } walk
            ? new Held(walk, inspection.Problems)
            : throw new Halt(ExitCode.Unreadable, NothingChecked(inspection.Problems));
    }

    private static string NothingChecked(IReadOnlyList<Problem> problems)
    {
        var lines = problems.Where(problem => problem.Effect == Effect.Stops).Select(problem => problem.At.Line).Distinct().Count();
        return $"Nothing checked yet. Mend {lines} {(lines == 1 ? "line" : "lines")}, run again.";
    }
}
