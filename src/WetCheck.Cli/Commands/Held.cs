using WetCheck.Cli.Files;
using WetCheck.Cli.Text;
using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Cli.Commands;

/// <summary>One job held against one book, as the words typed ask.</summary>
internal sealed record Held(Walk Walk)
{
    public ExitCode Code => ExitCodes.Weightiest(ExitCodes.Of(Walk.Problems), ExitCodes.Of(Walk.Verdict));

    /// <param name="changes">Lines to read as if they stood in the file.</param>
    public static Held Of(JobFile file, RuleBook book, IReadOnlyList<string> changes, Terminal terminal)
    {
        var (job, problems) = JobReader.Read(file.Shown, file.Text, book.Vocabulary);
        ProblemText.Write(problems, terminal.Err);
        job = job is null ? throw new Halt(ExitCode.Unreadable, NothingChecked(problems)) : changes.Aggregate(job, (now, line) => Changed(now, line, book));
        return new Held(Inspection.Of(job, problems, new ReadyBook(book)));
    }

    private static Job Changed(Job job, string line, RuleBook book)
    {
        var (changed, problem) = JobChange.Apply(job, book.Vocabulary, line);
        return changed ?? throw new Halt(ExitCode.TypedWrong, ProblemText.Of(problem!));
    }

    private static string NothingChecked(IReadOnlyList<Problem> problems)
    {
        var lines = problems.Where(problem => problem.Effect == Effect.Stops).Select(problem => problem.At.Line).Distinct().Count();
        return $"Nothing checked yet. Mend {lines} {(lines == 1 ? "line" : "lines")}, run again.";
    }
}
