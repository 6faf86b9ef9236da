using WetCheck.Cli.Commands;
using WetCheck.Cli.Files;
using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Cli.Asking;

/// <summary>The job as its file and its log tell it now, held open. Whoever else writes to the log is heard.</summary>
internal sealed class Standing
{
    private readonly RuleBook _book;
    private readonly Job _ofFile;
    private readonly LogFile _log;
    private readonly KeptWalk _kept;
    private readonly IReadOnlyList<Problem> _problems;
    private List<LoggedAnswer> _answers;
    private Walk? _walk;

    public Standing(JobFile file, RuleBook book, Terminal terminal)
    {
        _book = book;
        _log = LogFile.Of(file, terminal);
        var read = Held.Read(file, book, _log.Text(), terminal);
        (_ofFile, _answers, _problems) = (read.OfFile, [.. read.Answers], read.Problems);
        _kept = new KeptWalk(read.Now, BookHere.Ready(book));
    }

    public Walk Walk => _walk ??= _kept.Walk(_problems);

    public ExitCode Code => ExitCodes.Weightiest(ExitCodes.Of(_problems), ExitCodes.Of(Walk.Verdict));

    /// <summary>Takes what others wrote since it was last read.</summary>
    public LogNews? Hear() => _log.News() is { } text ? Take(text, own: null) : null;

    /// <summary>What can't be read of an answer, or is asked of it. Nothing is kept.</summary>
    public (bool IsRead, IReadOnlyList<Problem> Problems) Try(LoggedAnswer answer)
    {
        var (job, told) = JobLog.Add(_kept.Job, _book.Vocabulary, answer);
        return (job is not null, told);
    }

    /// <summary>Puts an answer on the disk. What it changes is worked out by <see cref="Count"/>.</summary>
    public (LoggedAnswer Answer, string? News) Write(LoggedAnswer answer)
    {
        var (written, news) = _log.Keep(answer);
        return (LogClock.After(_answers.Count > 0 ? _answers[^1] : null, written), news);
    }

    /// <summary>The clock stands before the last answer that was kept.</summary>
    public bool IsClockBack(LoggedAnswer answer) => LogClock.Jumped(_answers.Count > 0 ? _answers[^1] : null, answer);

    /// <summary>Takes an answer that was written, and what others wrote before it.</summary>
    public LogNews? Count(LoggedAnswer answer, string? news)
    {
        if (news is not null)
        {
            return Take(news, answer);
        }

        _answers.Add(answer);
        var (job, _) = JobLog.Add(_kept.Job, _book.Vocabulary, answer);
        Change(JobLog.AtLaterStop(_ofFile, job ?? _kept.Job));
        return null;
    }

    private void Change(Job job)
    {
        _kept.Change(job);
        _walk = null;
    }

    private LogNews Take(string text, LoggedAnswer? own)
    {
        var before = _answers;
        _answers = [.. LogReader.Read(_log.Shown, text).Answers];
        Change(JobLog.Apply(_ofFile, _book.Vocabulary, _answers).Job);
        return LogNews.Of(before, own is null ? _answers : [.. _answers.Where(answer => answer.Line != own.Line)]);
    }
}

/// <summary>What became of the log meanwhile.</summary>
/// <param name="Come">Answers that somebody else kept.</param>
/// <param name="Gone">Answers that no longer stand in it.</param>
internal sealed record LogNews(IReadOnlyList<LoggedAnswer> Come, IReadOnlyList<LoggedAnswer> Gone)
{
    public static LogNews Of(IReadOnlyList<LoggedAnswer> before, IReadOnlyList<LoggedAnswer> now)
    {
        var (old, kept) = (before.Select(answer => answer.Line).ToHashSet(StringComparer.Ordinal), now.Select(answer => answer.Line).ToHashSet(StringComparer.Ordinal));
        return new LogNews([.. now.Where(answer => !old.Contains(answer.Line))], [.. before.Where(answer => !kept.Contains(answer.Line))]);
    }
}
