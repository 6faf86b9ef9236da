using System.Globalization;
using WetCheck.Cli.Files;
using WetCheck.Cli.Help;
using WetCheck.Cli.Text;
using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Cli.Asking;

/// <summary>Asks, keeps, and says what changed.</summary>
internal sealed class Asker(Standing standing, Phrases phrases, string? by, Terminal terminal)
{
    /// <summary>The answer that <c>again</c> mends.</summary>
    private Question? _last;

    private Question? _at;

    private bool _isClockTold;

    public static Asker Of(JobFile file, RuleBook book, string? by, string language, Terminal terminal) =>
        new(new Standing(file, book, terminal), new Phrases(book, language), by, terminal);

    public Walk Walk => standing.Walk;

    /// <summary>All that is owed, until the answers end. What is skipped is not asked again.</summary>
    public ExitCode All()
    {
        var asked = new HashSet<(string, string, bool)>();
        while (Next(asked) is { } question)
        {
            if (asked.Count == 0)
            {
                Say(Column.Wrap(phrases["kept.help"]));
            }

            asked.Add(question.Key);
            _at = question;
            switch (Ask(question))
            {
                case Reply.Ended:
                    return End(left: _last is null);
                case Reply.More:
                    asked.Remove(question.Key);
                    break;
            }
        }

        return End(left: _last is null);
    }

    public ExitCode Number(string asked, string? answer)
    {
        Hear();
        var questions = Named.Find(Walk, asked, phrases);
        if (string.IsNullOrWhiteSpace(answer))
        {
            _ = questions.All(question => Ask(question) != Reply.Ended);
            return End(left: false);
        }

        return questions.Count > 1 ? throw Named.Several(asked, questions, LookQuestion.Command(Walk))
            : Keep(questions[0], Typing(questions[0], answer)) ? End(left: false)
            : ExitCode.TypedWrong;
    }

    private enum Reply { Ended, Skipped, Kept, More }

    private Question? Next(HashSet<(string, string, bool)> asked)
    {
        Hear();
        var open = Question.Owed(Walk).Where(question => !asked.Contains(question.Key)).ToList();

        // Who is at one place with the tape goes on to the next, whatever has become more pressing.
        return open.Find(question => _at is not null && question.IsAlike(_at)) ?? (open.Count > 0 ? open[0] : null);
    }

    private Reply Ask(Question question)
    {
        while (true)
        {
            Say(LookQuestion.Of(Walk, question.Look, phrases, question.Line.Path));
            if (question.Line.IsList && question.Replaces is not null)
            {
                Say(Column.Wrap(phrases.Say("kept.whole-line", ("line", question.Line.Path)), new string(' ', Column.Indent)));
            }

            if (terminal.In.ReadLine() is not { } line)
            {
                return Reply.Ended;
            }

            if (TooLong.Is(line))
            {
                terminal.Err.WriteLine(TooLong.Say(line));
                if (terminal.IsHand)
                {
                    continue;
                }

                return Reply.Skipped;
            }

            var typed = Typing(question, line);
            if (Meant.Again(typed) is { } better)
            {
                if (Mend(better) == Reply.Ended)
                {
                    return Reply.Ended;
                }
            }
            else if (Meant.IsSkipped(typed))
            {
                return Reply.Skipped;
            }
            else if (Keep(question, typed))
            {
                return Meant.IsMore(question, typed) ? Reply.More : Reply.Kept;
            }
            else if (!terminal.IsHand)
            {
                // The next line of another program is for the next question.
                return Reply.Skipped;
            }
        }
    }

    /// <summary>The answer before, once more: the new one takes its place.</summary>
    private Reply Mend(string typed)
    {
        if (_last is not { } last)
        {
            Say([phrases["kept.nothing-to-mend"]]);
            return Reply.Skipped;
        }

        if (typed.Length > 0 && !last.Line.IsList)
        {
            return Keep(last, typed) ? Reply.Kept : Reply.Skipped;
        }

        return Ask(last);
    }

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
        var now = Stamp.Of(terminal.Clock.GetLocalNow());
        var answer = new LoggedAnswer(new At("answer", 1, 1), now, question.Line.Path, read, by, null, question.Replaces);
        var isWritten = false;
        try
        {
            var (isRead, told) = standing.Try(answer);
            ProblemText.Write(told, terminal.Err);
            if (!isRead)
            {
                return false;
            }

            ClockBack(answer);
            var before = Walk;
            var (written, news) = standing.Write(answer);
            isWritten = true;
            _last = question with { Replaces = written.Time };
            Kept(before, written, news);
            return true;
        }
        catch (Exception fault) when (fault is not Halt || isWritten)
        {
            // Whatever is wrong with the program, the answer is not lost without a word.
            terminal.Err.WriteLine(phrases.Say(isWritten ? "kept.still" : "kept.not", ("answer", $"{answer.Path}: {answer.Read}")));
            throw;
        }
    }

    private void Kept(Walk before, LoggedAnswer written, string? news)
    {
        Changed(Sentence.Joined(Told(standing.Count(written, news)), phrases["kept.kept"]), before);
    }

    private void Hear()
    {
        var before = Walk;
        if (Told(standing.Hear()) is { Length: > 0 } news)
        {
            Changed(news, before);
        }
    }

    private void Changed(string opening, Walk before) => Say(KeptText.Of(opening, before, Walk, Question.Owed(Walk).Count(), phrases));

    private string Told(LogNews? news) => news is null ? "" : Sentence.Joined(Told("kept.others", news.Come), Told("kept.gone", news.Gone));

    private string Told(string key, IReadOnlyList<LoggedAnswer> answers) => answers.Count == 0 ? "" : phrases.Say(
        key, ("count", answers.Count.ToString(CultureInfo.InvariantCulture)), ("answers", Answers(answers)));

    private void ClockBack(LoggedAnswer answer)
    {
        if (!_isClockTold && standing.IsClockBack(answer))
        {
            _isClockTold = true;
            Say(Column.Wrap(phrases.Say("kept.clock", ("time", answer.Time))));
        }
    }

    private static string Answers(IReadOnlyList<LoggedAnswer> answers) => string.Join("; ", answers.Select(answer => $"{answer.Path}: {answer.Read}"));

    /// <summary>Words of another language that stand for those of a job file.</summary>
    private string Typing(Question question, string typed) => question.Look.Reading?.Choices.Any(choice => Names.Same(phrases.Of(choice.Say), typed.Trim())) == true
        ? typed.Trim()
        : TypedWords.InEnglish(typed.Trim(), phrases);

    private void Say(IEnumerable<string> lines)
    {
        foreach (var line in lines)
        {
            terminal.Out.WriteLine(line);
        }
    }

    private ExitCode End(bool left)
    {
        if (left)
        {
            Say([phrases.Count("kept.left", Question.Owed(Walk).Count())]);
        }

        if (Walk.Verdict == Verdict.NothingOwed)
        {
            Say([phrases["verdict.nothing-owed"]]);
        }

        return standing.Code;
    }
}
