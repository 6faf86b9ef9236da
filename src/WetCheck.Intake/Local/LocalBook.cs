using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>
/// The book that a job is held against where its <c>local:</c> line names files of local changes: the base and the
/// changes, each with its own source.
/// </summary>
public static class LocalBook
{
    /// <summary>The same book where the job names no file; none where a file is missing or holds what can't be taken.</summary>
    /// <param name="jobFile">Name of the job file, for places in messages.</param>
    /// <param name="textOf">The text of a file named in the job; null: there is no such file.</param>
    public static (RuleBook? Book, IReadOnlyList<Problem> Problems) Of(RuleBook book, string jobFile, string jobText,
        Func<string, string?> textOf) =>
        Of(book, JobReader.Read(jobFile, jobText, book.Vocabulary).Job, jobFile, jobText, textOf);

    /// <summary>Of a job that has been read.</summary>
    /// <param name="job">Null: its shape is broken, and it names nothing.</param>
    public static (RuleBook? Book, IReadOnlyList<Problem> Problems) Of(
        RuleBook book, Job? job, string jobFile, string jobText, Func<string, string?> textOf)
    {
        var problems = new ProblemList();
        problems.Open(new SourceText(jobFile, jobText));
        foreach (var (file, at) in job?.Local ?? [])
        {
            if (!IsBeside(file))
            {
                problems.Add(at, Messages.LocalElsewhere(file));
            }
            else if (textOf(file) is { } text)
            {
                book = With(book, file, text, problems);
            }
            else
            {
                problems.Add(at, Messages.LocalMissing(file));
            }
        }

        return (problems.Any ? null : book, problems.InOrder());
    }

    /// <summary>
    /// In the folder of the job, or in one within it, on every system: no path from the top, none that goes up, no drive, no other machine.
    /// A job that came from elsewhere must not open what lies about here.
    /// </summary>
    private static bool IsBeside(string file) =>
        file is not (['/' or '\\', ..] or [_, ':', ..]) && !file.Split('/', '\\').Any(part => part.Trim() == "..");

    private static RuleBook With(RuleBook book, string file, string text, ProblemList problems)
    {
        var source = new SourceText(file, text);
        problems.Open(source);
        if (Fields.Of(Document.Read(source, problems), problems) is not { } fields)
        {
            problems.Add(source.Place(1, 1), Messages.LocalEmpty());
            return book;
        }

        var (name, date) = (fields.Need("local"), fields.Text("date") ?? "");
        fields.Demand("changes");
        var changes = fields.Take("changes") is { } node ? (node as ListNode)?.Items ?? [node] : [];
        fields.Done();
        var reader = new ChangeReader(problems);
        foreach (var (change, index) in changes.Select((change, index) => (change, index)))
        {
            book = reader.Read(book, change,
                section => new SourceEntry($"{file} {index + 1}", "Local", name, section, date, null,
                SourceStatus.SecondHand)
                { GivenIn = file });
        }

        if (!problems.Any)
        {
            BookChecks.Run(book, [], hasSources: true, problems);
        }

        return book with { Local = [.. book.Local, new LocalChanges(name, date, file, changes.Count)] };
    }
}
