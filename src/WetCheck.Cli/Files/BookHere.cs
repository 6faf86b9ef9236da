using WetCheck.Cli.Text;
using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Cli.Files;

/// <summary>The rule book that the words typed ask for.</summary>
internal static class BookHere
{
    /// <param name="folder">Null: the built-in one.</param>
    public static RuleBook Load(string? folder, Terminal terminal) => folder is not null ? LoadWithCases(folder, terminal).Book
        : BuiltInBook.Ready.Book;

    /// <summary>The book made ready to hold jobs against.</summary>
    public static ReadyBook Ready(RuleBook book) => BuiltInBook.Is(book) ? BuiltInBook.Ready : new ReadyBook(book);

    /// <summary>The book that a job is held against: with the local changes it names.</summary>
    public static RuleBook LoadFor(JobFile job, string? folder, Terminal terminal)
    {
        var (book, problems) = LocalBook.Of(Load(folder, terminal), job.Shown, job.Text, file => Beside(job, file, terminal));
        ProblemText.Write(problems, terminal.Err);
        return book ?? throw new Halt(ExitCode.Unreadable, "The local changes can't be used as they stand. Nothing checked.");
    }

    private static string? Beside(JobFile job, string file, Terminal terminal)
    {
        var shown = System.IO.Path.Combine(System.IO.Path.GetDirectoryName(job.Shown) ?? "", file);
        return File.Exists(terminal.FullPath(shown)) ? TextFile.Read(terminal.FullPath(shown), shown) : null;
    }

    public static (RuleBook Book, IReadOnlyList<RuleCase> Cases) LoadWithCases(string? folder, Terminal terminal)
    {
        var (book, cases) = folder is null ? (BuiltInBook.Ready.Book, BuiltInBook.Cases) : Read(folder, terminal);
        return (book, [.. cases.Select(one => one with { At = In(folder, one.At) })]);
    }

    private static (RuleBook Book, IReadOnlyList<RuleCase> Cases) Read(string folder, Terminal terminal)
    {
        var (book, cases, problems) = RuleBookReader.Read(BookFiles.Read(folder, terminal));
        ProblemText.Write([.. problems.Select(problem => problem with { At = In(folder, problem.At) })], terminal.Err);
        return book is null ? throw new Halt(ExitCode.Unreadable, "The rule book can't be used as it stands. Nothing checked.") : (book, cases);
    }

    /// <summary>A place of the book as it is opened from here.</summary>
    public static At In(string? folder, At at) => at with { File = System.IO.Path.Combine(folder ?? "rules", at.File) };
}
