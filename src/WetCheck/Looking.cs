using WetCheck.Asking;
using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck;

/// <summary>Asks what is owed of a room, keeps each answer in its log, and says what changed.</summary>
/// <param name="log">The one that the room was read with.</param>
/// <param name="by">Who looks; null: not said.</param>
public sealed partial class Looking(Room room, IAnswerLog log, ITalk talk, string? by, string language)
{
    private readonly Phrases _phrases = new(room.Book.Rules, language);

    /// <summary>The answer that <c>again</c> mends.</summary>
    private Question? _last;

    private Question? _at;

    private bool _isClockTold;

    internal Walk Walk => room.Walk;

    /// <summary>All that is owed, until the answers end. What is skipped is not asked again.</summary>
    /// <exception cref="RefusedException">An answer can't be kept.</exception>
    public void All()
    {
        var asked = new HashSet<(string, string, bool)>();
        while (Next(asked) is { } question)
        {
            if (asked.Count == 0)
            {
                Say(Column.Wrap(_phrases["kept.help"]));
            }

            asked.Add(question.Key);
            _at = question;
            switch (Ask(question))
            {
                case Reply.Ended:
                    End(left: _last is null);
                    return;
                case Reply.More:
                    asked.Remove(question.Key);
                    break;
            }
        }

        End(left: _last is null);
    }

    /// <summary>What is asked for by a number of the list, <c>214-D</c>, or by a line of the job file.</summary>
    /// <param name="answer">Null or blank: it is asked.</param>
    /// <returns>False: the answer can't be read, which was told.</returns>
    /// <exception cref="RefusedException">Nothing is asked by that name, or the answer can't be kept.</exception>
    public bool Number(string asked, string? answer)
    {
        Hear();
        var questions = Named.Find(Walk, asked, _phrases);
        if (string.IsNullOrWhiteSpace(answer))
        {
            _ = questions.All(question => Ask(question) != Reply.Ended);
            End(left: false);
            return true;
        }

        if (questions.Count > 1)
        {
            throw Named.Several(asked, questions, LookQuestion.Command(Walk));
        }

        if (!Keep(questions[0], Typing(questions[0], answer)))
        {
            return false;
        }

        End(left: false);
        return true;
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
            Say(LookQuestion.Of(Walk, question.Look, _phrases, question.Line.Path));
            if (question.Line.IsList && question.Replaces is not null)
            {
                Say(Column.Wrap(_phrases.Say("kept.whole-line", ("line", question.Line.Path)), new string(' ', Column.Indent)));
            }

            if (talk.Hear() is not { } line)
            {
                return Reply.Ended;
            }

            if (TooLong.Is(line))
            {
                talk.Warn(TooLong.Say(line));
                if (talk.IsHand)
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
            else if (!talk.IsHand)
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
            Say([_phrases["kept.nothing-to-mend"]]);
            return Reply.Skipped;
        }

        if (typed.Length > 0 && !last.Line.IsList)
        {
            return Keep(last, typed) ? Reply.Kept : Reply.Skipped;
        }

        return Ask(last);
    }

    /// <summary>Words of another language that stand for those of a job file.</summary>
    private string Typing(Question question, string typed) =>
        question.Look.Reading?.Choices.Any(choice => Names.Same(_phrases.Of(choice.Say), typed.Trim())) == true
        ? typed.Trim()
        : TypedWords.InEnglish(typed.Trim(), _phrases);

    private void Say(IEnumerable<string> lines)
    {
        foreach (var line in lines)
        {
            talk.Say(line);
        }
    }

    private void End(bool left)
    {
        if (left)
        {
            Say([_phrases.Count("kept.left", Question.Owed(Walk).Count())]);
        }

        if (Walk.Verdict == Verdict.NothingOwed)
        {
            Say([_phrases["verdict.nothing-owed"]]);
        }
    }
}
