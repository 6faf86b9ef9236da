using WetCheck.Intake;
using WetCheck.Reporting;

namespace WetCheck;

/// <summary>
/// A room that is started: five questions, then its job file and a sheet to write on. Where there are no more answers the rest is
/// don't know: nothing waits.
/// </summary>
public sealed class NewRoom
{
    private readonly FirstQuestions _words;
    private readonly Book _book;
    private readonly string _language;
    private readonly ITalk _talk;
    private Model.Job? _job;

    public NewRoom(Book book, string language, ITalk talk)
    {
        (_book, _language, _talk) = (book, language, talk);
        _words = new FirstQuestions(book.Rules, language);
        talk.Say(_words.Before);
    }

    /// <summary>The job file, with a line for each question.</summary>
    public string File => StartFile.Of(_job!, _book.Rules, _language);

    /// <summary>The sheet to write on, a page to print.</summary>
    /// <exception cref="RefusedException">The template of the book can't be filled.</exception>
    public string Sheet => Room.Filled(() => AnswerSheet.Html(_job!, _book.Rules, _language));

    /// <summary>No name at all, or words for don't know.</summary>
    public static bool IsUnnamed(string typed) => DontKnow.Is(typed);

    /// <exception cref="RefusedException">The answer is longer than anything typed by hand.</exception>
    public string AskName() => Heard(_words.Name);

    /// <summary>Asks all that is known of a room before there is a file.</summary>
    /// <exception cref="RefusedException">An answer is longer than anything typed by hand.</exception>
    public void Ask(string name)
    {
        var job = new FirstJob(name, _book.Rules.Vocabulary);
        Ask(_words.Method, job.Method);
        Ask(_words.Stage(job.Job.Method), job.Stage);
        Ask(_words.Size, job.Size);
        Ask(_words.Codes, job.Codes);
        _job = job.Job;
    }

    /// <summary>Where the two files lie.</summary>
    public string Written(string file, string sheet) => _words.Written(file, sheet);

    /// <summary>At a keyboard what can't be read is asked once more. Lines from elsewhere stay in step: one for each question.</summary>
    private void Ask(string question, Func<string, string?> take)
    {
        var unread = take(Heard(question));
        if (unread is not null && _talk.IsHand)
        {
            _talk.Warn(unread);
            unread = take(_talk.Hear() ?? "");
        }

        if (unread is not null)
        {
            _talk.Warn($"{unread} {_words.DontKnow}");
        }
    }

    private string Heard(string question)
    {
        _talk.Say(question);
        var typed = _talk.Hear() ?? "";
        return TooLong.Is(typed) ? throw new RefusedException(RefusedAs.TypedWrong, TooLong.Say(typed)) : typed;
    }
}
