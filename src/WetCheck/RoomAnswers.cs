using WetCheck.Asking;
using WetCheck.Flow;
using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck;

/// <summary>Questions of a room, and answers that are kept.</summary>
public sealed partial class Room
{
    /// <summary>What is owed, in the order in which it is to be looked at.</summary>
    public IReadOnlyList<Asked> Owed(string language) => [.. Question.Owed(Walk).Select(question => Asked(question, language))];

    /// <summary>What is asked for by a number of the list, <c>214-D</c>, or by a line of the job file, <c>liner.right</c>.</summary>
    /// <exception cref="RefusedException">There is none, or nothing is asked for it.</exception>
    public IReadOnlyList<Asked> AskedBy(string number, string language) =>
        [.. Named.Find(Walk, number, new Phrases(Book.Rules, language)).Select(question => Asked(question, language))];

    /// <summary>What an answer comes to: the lines to keep in the log; none where it can't be read, which is told.</summary>
    /// <param name="at">When it was given.</param>
    /// <param name="by">Who looked; null: not said.</param>
    public IReadOnlyList<string> LinesFor(Asked asked, string typed, DateTimeOffset at, string? by, Action<Told> tell)
    {
        var lines = new List<string>();
        foreach (var (question, read) in Meant.Of(asked.Question, typed, Walk, Question.Owed(Walk)))
        {
            var answer = question.Answered(read, at, by);
            var (isRead, told) = Try(answer);
            Tell(told, tell);
            if (!isRead)
            {
                return [];
            }

            lines.Add(answer.ToJson());
        }

        return lines;
    }

    /// <summary>Counts a line that was kept in the log, once.</summary>
    public void Keep(string line) => Take($"{_log}{(_log.Length > 0 && !_log.EndsWith('\n') ? "\n" : "")}{line}\n", own: null);

    /// <summary>The text of the log, with every line that was kept.</summary>
    public string Log => _log;

    internal LoggedAnswer? Last => _answers.Count > 0 ? _answers[^1] : null;

    /// <summary>What can't be read of an answer, or is asked of it. Nothing is kept.</summary>
    internal (bool IsRead, IReadOnlyList<Problem> Problems) Try(LoggedAnswer answer)
    {
        var (job, told) = JobLog.Add(_job, Book.Rules.Vocabulary, answer);
        return (job is not null, told);
    }

    /// <summary>Counts an answer that was written behind those before.</summary>
    internal void Count(LoggedAnswer answer)
    {
        _answers.Add(answer);
        _log += answer.Line + "\n";
        var (job, _) = JobLog.Add(_job, Book.Rules.Vocabulary, answer);
        Change(JobLog.AtLaterStop(_ofFile, job ?? _job));
    }

    /// <summary>Takes the log as it stands now, whoever wrote it.</summary>
    /// <param name="own">Not told as news; null: all are.</param>
    internal LogNews Take(string text, LoggedAnswer? own)
    {
        var before = _answers;
        _log = text;
        _answers = [.. LogReader.Read(Texts.Log, text).Answers];
        Change(JobLog.Apply(_ofFile, Book.Rules.Vocabulary, _answers).Job);
        return LogNews.Of(before, own is null ? _answers : [.. _answers.Where(answer => answer.Line != own.Line)]);
    }

    private void Change(Job job)
    {
        _kept ??= new KeptWalk(_job, Book.Ready);
        _kept.Change(job);
        (_job, _walk) = (job, null);
    }

    private Asked Asked(Question question, string language) => new(
        question, LookQuestion.Of(Walk, question.Look, new Phrases(Book.Rules, language), question.Line.Path));
}
