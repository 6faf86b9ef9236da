using WetCheck.Cli.Text;
using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Cli.Files;

/// <summary>The rule book that the words typed ask for.</summary>
internal static class BookHere
{
    private static readonly Lock s_reading = new();

    /// <summary>Read and made ready once: it can't change while the program runs.</summary>
    private static ReadyBook? s_builtIn;

    /// <param name="folder">Null: the built-in one.</param>
    public static RuleBook Load(string? folder, Terminal terminal) => folder is not null ? LoadWithCases(folder, terminal).Book
        : BuiltIn(terminal).Book;

    /// <summary>The book made ready to hold jobs against.</summary>
    public static ReadyBook Ready(RuleBook book) => s_builtIn is { } ready && ReferenceEquals(ready.Book, book) ? ready : new ReadyBook(book);

    /// <summary>The book that a job is held against: with the local changes it names.</summary>
    public static RuleBook LoadFor(JobFile job, string? folder, Terminal terminal)
    {
        var (book, problems) = LocalBook.Of(Load(folder, terminal), job.Shown, job.Text, file => Beside(job, file, terminal));
        ProblemText.Write(problems, terminal.Err);
        return book ?? throw new Halt(ExitCode.Unreadable, "The local changes can't be used as they stand. Nothing checked.");
    }

    /// <summary>Without its cases, which only a proof reads.</summary>
    private static ReadyBook BuiltIn(Terminal terminal)
    {
        lock (s_reading)
        {
            return s_builtIn ??= new ReadyBook(
                Read([.. BookFiles.BuiltIn().Where(file => !file.Path.EndsWith(RuleBookReader.Cases, StringComparison.Ordinal))], null, terminal).Book);
        }
    }

    private static string? Beside(JobFile job, string file, Terminal terminal)
    {
        var shown = System.IO.Path.Combine(System.IO.Path.GetDirectoryName(job.Shown) ?? "", file);
        return File.Exists(terminal.FullPath(shown)) ? TextFile.Read(terminal.FullPath(shown), shown) : null;
    }

    public static (RuleBook Book, IReadOnlyList<RuleCase> Cases) LoadWithCases(string? folder, Terminal terminal) =>
        Read(BookFiles.Read(folder, terminal), folder, terminal);

    private static (RuleBook Book, IReadOnlyList<RuleCase> Cases) Read(IReadOnlyList<(string Path, string Text)> files, string? folder, Terminal terminal)
    {
        var (book, cases, problems) = RuleBookReader.Read(files);
        var where = folder ?? "rules";
        ProblemText.Write([.. problems.Select(problem => problem with { At = In(where, problem.At) })], terminal.Err);
        return book is null
            ? throw new Halt(ExitCode.Unreadable, "The rule book can't be used as it stands. Nothing checked.")
            : (book, [.. cases.Select(one => one with { At = In(where, one.At) })]);
    }

    private static At In(string folder, At at) => at with { File = System.IO.Path.Combine(folder, at.File) };
}
