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
        var (job, problems) = WithLog(file, book, terminal);
        job = changes.Aggregate(job, (now, line) => Changed(now, line, book));
        return new Held(Inspection.Of(job, problems, BookHere.Ready(book)));
    }

    /// <summary>The job with the answers of the log beside it. What can't be read of either is told.</summary>
    public static (Job Job, IReadOnlyList<Problem> Problems) WithLog(JobFile file, RuleBook book, Terminal terminal)
    {
        var read = Read(file, book, LogFile.Of(file, terminal).Text(), terminal);
        return (read.Now, read.Problems);
    }

    /// <summary>The same, with what it is made of.</summary>
    /// <param name="log">The text of the log.</param>
    public static (Job OfFile, IReadOnlyList<LoggedAnswer> Answers, Job Now, IReadOnlyList<Problem> Problems) Read(JobFile file, RuleBook book, string log, Terminal terminal)
    {
        var (job, ofFile) = JobReader.Read(file.Shown, file.Text, book.Vocabulary);
        if (job is null)
        {
            ProblemText.Write(ofFile, terminal.Err);
            throw new Halt(ExitCode.Unreadable, NothingChecked(ofFile));
        }

        var levels = LevelsFile.Of(file, terminal);
        (job, var ofLevels) = LevelFile.Apply(job, book.Vocabulary, levels.Shown, levels.Text);
        var (answers, ofLog) = LogReader.Read(LogFile.Beside(file.Shown), log);
        var (now, ofAnswers) = JobLog.Apply(job, book.Vocabulary, answers);
        IReadOnlyList<Problem> all = [.. ofFile, .. ofLevels, .. ofLog.Concat(ofAnswers).OrderBy(problem => problem.At.Line)];
        ProblemText.Write(all, terminal.Err);
        return (job, answers, now, all);
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
