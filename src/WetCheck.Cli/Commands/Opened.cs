using WetCheck.Cli.Files;

namespace WetCheck.Cli.Commands;

/// <summary>A room as it lies in a folder: its job file, what stands beside it, its log.</summary>
internal sealed record Opened(JobFile File, Room Room, LogFile Log)
{
    /// <summary>Of the room alone.</summary>
    public ExitCode Code => ExitCodes.Weightiest(ReadCode, ExitCodes.Of(Room.State));

    /// <summary>Whether all of it could be read.</summary>
    public ExitCode ReadCode => Room.IsRead ? ExitCode.NothingOwed : ExitCode.Unreadable;

    /// <param name="job">As typed; null: the one job of the folder.</param>
    /// <param name="command">For lines to type instead.</param>
    /// <param name="folder">Of a rule book; null: the built-in one.</param>
    /// <param name="changes">Lines to read as if they stood in the file.</param>
    public static Opened Find(string? job, string command, string? folder, Terminal terminal, params IEnumerable<string> changes)
    {
        var file = JobFile.Find(job, command, terminal);
        return Read(file, BookHere.Load(folder, terminal), terminal, changes);
    }

    public static Opened Read(JobFile file, Book book, Terminal terminal, params IEnumerable<string> changes)
    {
        var log = LogFile.Of(file, terminal);
        var texts = new RoomTexts(file.Shown, file.Text);
        var room = Room.Read(
            book,
            texts with
            {
                Beside = name => name == texts.Log ? log.Read() : name == texts.Levels ? Text(name, terminal)
                : Text(Beside(file, name), terminal)
            },
            told => terminal.Err.WriteLine(told));
        return new Opened(file, changes.Aggregate(room, (now, line) => now.With(line)), log);
    }

    /// <summary>A file that the job names, as this folder names it.</summary>
    public static string Beside(JobFile file, string name) =>
        System.IO.Path.Combine(System.IO.Path.GetDirectoryName(file.Shown) ?? "", name);

    private static string? Text(string shown, Terminal terminal) =>
        System.IO.File.Exists(terminal.FullPath(shown)) ? TextFile.Read(terminal.FullPath(shown), shown) : null;
}
