using WetCheck.Flow;
using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck;

/// <summary>
/// One room: its job file, the answers kept in its log, its levels, held against a book with the local changes that it names. Every
/// list is made from it. A line kept later revises only what it touches. Not for several threads.
/// </summary>
public sealed partial class Room
{
    private readonly Job _ofFile;
    private readonly IReadOnlyList<Problem> _problems;
    private Job _job;
    private List<LoggedAnswer> _answers;
    private string _log;
    private KeptWalk? _kept;
    private Walk? _walk;

    private Room(Book book, RoomTexts texts, Job ofFile, string log, IReadOnlyList<LoggedAnswer> answers, Job job,
        IReadOnlyList<Problem> problems)
    {
        (Book, Texts, _ofFile, _log) = (book, texts, ofFile, log);
        (_answers, _job, _problems) = ([.. answers], job, problems);
    }

    /// <summary>With the local changes of the room.</summary>
    public Book Book { get; }

    /// <summary>What it was read from.</summary>
    public RoomTexts Texts { get; }

    public string Name => _job.Name;

    /// <summary>Files of local changes, as the job names them.</summary>
    public IReadOnlyList<string> LocalFiles => [.. _job.Local.Select(local => local.File)];

    /// <summary>Every line could be read, or taken as it stands.</summary>
    public bool IsRead => _problems.All(problem => problem.Effect == Effect.Asked);

    public RoomState State => Walk.Verdict switch
    {
        Verdict.NotReady => RoomState.NotReady,
        Verdict.Unfinished => RoomState.Unfinished,
        _ => RoomState.NothingOwed,
    };

    internal Walk Walk => _walk ??= _kept?.Walk(_problems) ?? Inspection.Of(_job, _problems, Book.Ready);

    /// <param name="book">Without the local changes of the room.</param>
    /// <param name="tell">Hears what can't be read, or is asked about, in the order of the files.</param>
    /// <exception cref="RefusedException">Nothing can be checked before the job file or a file of local changes is mended.</exception>
    public static Room Read(Book book, RoomTexts texts, Action<Told> tell)
    {
        var (ofFile, read) = JobReader.Read(texts.File, texts.Job, book.Rules.Vocabulary);
        var (local, ofLocal) = LocalBook.Of(book.Rules, ofFile, texts.File, texts.Job, texts.Beside);
        Tell(ofLocal, tell);
        if (local is null)
        {
            throw new RefusedException(RefusedAs.Unreadable, "The local changes can't be used as they stand. Nothing checked.");
        }

        if (ofFile is null)
        {
            Tell(read, tell);
            throw new RefusedException(RefusedAs.Unreadable, NothingChecked(read));
        }

        (ofFile, var ofLevels) = LevelFile.Apply(ofFile, local.Vocabulary, texts.Levels, texts.Beside(texts.Levels));
        var log = texts.Beside(texts.Log) ?? "";
        var (answers, ofLog) = LogReader.Read(texts.Log, log);
        var (job, ofAnswers) = JobLog.Apply(ofFile, local.Vocabulary, answers);
        IReadOnlyList<Problem> all = [.. read, .. ofLevels, .. ofLog.Concat(ofAnswers).OrderBy(problem => problem.At.Line)];
        Tell(all, tell);
        return new Room(book.With(local), texts, ofFile, log, answers, job, all);
    }

    /// <summary>
    /// The room as it would be with one line of its file written otherwise: <c>curb.height: 5</c>. This one stays as it
    /// is.
    /// </summary>
    /// <exception cref="RefusedException">The line can't be read.</exception>
    public Room With(string line)
    {
        var (changed, problem) = JobChange.Apply(_job, Book.Rules.Vocabulary, line);
        return changed is not null ? new Room(Book, Texts, _ofFile, _log, _answers, changed, _problems)
            : throw new RefusedException(RefusedAs.TypedWrong, Told.About(problem!).ToString());
    }

    private static void Tell(IEnumerable<Problem> problems, Action<Told> tell)
    {
        foreach (var problem in problems)
        {
            tell(Told.About(problem));
        }
    }

    private static string NothingChecked(IReadOnlyList<Problem> problems)
    {
        var lines = problems.Where(problem => problem.Effect == Effect.Stops).Select(problem => problem.At.Line).Distinct().Count();
        return $"Nothing checked yet. Mend {lines} {(lines == 1 ? "line" : "lines")}, run again.";
    }
}
