using System.Globalization;
using WetCheck.Asking;
using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck;

/// <summary>How an answer is kept, and what is said of what it changed.</summary>
public sealed partial class Looking
{
    /// <returns>False: it can't be read, which was told, and nothing was kept.</returns>
    private bool Keep(Question question, string typed)
    {
        var all = Meant.Of(question, typed, Walk, Question.Owed(Walk));
        foreach (var (one, read) in all.Count == 0 ? [(question, question.Line.Answer(typed))] : all)
        {
            if (!KeepOne(one, read))
            {
                return false;
            }
        }

        return true;
    }

    private bool KeepOne(Question question, string read)
    {
        var answer = question.Answered(read, talk.Now, by);
        var isWritten = false;
        try
        {
            var (isRead, told) = room.Try(answer);
            foreach (var problem in told)
            {
                talk.Warn(Told.About(problem).ToString());
            }

            if (!isRead)
            {
                return false;
            }

            ClockBack(answer);
            var before = Walk;
            var (written, news) = KeptAnswer.Write(answer, room, log);
            isWritten = true;
            _last = question with { Replaces = written.Time };
            Kept(before, written, news);
            return true;
        }
        catch (Exception fault) when (fault is not RefusedException || isWritten)
        {
            // Whatever is wrong with the program, the answer is not lost without a word.
            talk.Warn(_phrases.Say(isWritten ? "kept.still" : "kept.not", ("answer", $"{answer.Path}: {answer.Read}")));
            throw;
        }
    }

    private void Kept(Walk before, LoggedAnswer written, string? news)
    {
        Changed(Sentence.Joined(News(KeptAnswer.Count(written, news, room)), _phrases["kept.kept"]), before);
    }

    private void Hear()
    {
        var before = Walk;
        if (News(log.News() is { } text ? room.Take(text, own: null) : null) is { Length: > 0 } news)
        {
            Changed(news, before);
        }
    }

    private void Changed(string opening, Walk before) => Say(KeptText.Of(opening, before, Walk, Question.Owed(Walk).Count(), _phrases));

    private string News(LogNews? news) => news is null ? "" : Sentence.Joined(News("kept.others", news.Come), News("kept.gone", news.Gone));

    private string News(string key, IReadOnlyList<LoggedAnswer> answers) => answers.Count == 0 ? "" : _phrases.Say(
        key, ("count", answers.Count.ToString(CultureInfo.InvariantCulture)), ("answers", Answers(answers)));

    private void ClockBack(LoggedAnswer answer)
    {
        if (!_isClockTold && LogClock.Jumped(room.Last, answer))
        {
            _isClockTold = true;
            Say(Column.Wrap(_phrases.Say("kept.clock", ("time", answer.Time))));
        }
    }

    private static string Answers(IReadOnlyList<LoggedAnswer> answers) =>
        string.Join("; ", answers.Select(answer => $"{answer.Path}: {answer.Read}"));
}
