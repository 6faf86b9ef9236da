using WetCheck.Cli.Text;
using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Cli.Files;

/// <summary>The rule book that the words typed ask for.</summary>
internal static class BookHere
{
    /// <param name="folder">Null: the built-in one.</param>
    public static RuleBook Load(string? folder, Terminal terminal)
    {
        var (book, problems) = RuleBookReader.Read(BookFiles.Read(folder, terminal));
        ProblemText.Write(problems, terminal.Err);
        return book ?? throw new Halt(ExitCode.Unreadable, "The rule book can't be used as it stands. Nothing checked.");
    }
}
