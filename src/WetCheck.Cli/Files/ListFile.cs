using WetCheck.Cli.Commands;

namespace WetCheck.Cli.Files;

/// <summary>
/// Writes a list or a drawing into a file. What a job is read from is never replaced; of other files only an earlier list is, unless
/// <c>--force</c> was typed.
/// </summary>
internal sealed class ListFile(Opened opened, bool isForced, Terminal terminal)
{
    /// <summary>Endings of what is read: jobs, rules and local changes; logs; levels.</summary>
    private static readonly string[] s_read = [".yaml", ".yml", ".jsonl", ".csv"];

    public void Write(string path, string text)
    {
        var place = Place(path);
        if (IsRead(path) || IsRead(place))
        {
            throw new Halt(ExitCode.Unwritable, $"{path} is read, not written: no list takes the place of a job or of what belongs to one. "
                + "Give the list a name of its own.");
        }

        if (Directory.Exists(place))
        {
            throw new Halt(ExitCode.Unwritable, $"{path} is a folder. Name a file in it.");
        }

        if (!SystemCalls.IsPlainFile(place))
        {
            throw new Halt(ExitCode.Unwritable,
                $"{path} is no plain file but a pipe or a device, and is kept as it is. Leave out -o to write on the screen.");
        }

        if (File.Exists(place) && !isForced && !IsList(place))
        {
            throw new Halt(ExitCode.Unwritable, $"{WholeFile.IsThere(path)} It is no list of this program's."
                + "\n    Give the list another name, or add --force to replace it.");
        }

        WholeFile.Write(place == terminal.FullPath(path) ? path : place, text, isNew: false, terminal);
        terminal.Out.WriteLine($"Written: {path}");
    }

    /// <summary>Where a link leads; of what can't be followed the link itself.</summary>
    private string Place(string path)
    {
        var full = terminal.FullPath(path);
        try
        {
            return File.ResolveLinkTarget(full, returnFinalTarget: true)?.FullName ?? full;
        }
        catch (Exception fault) when (DiskFault.Is(fault))
        {
            return full;
        }
    }

    /// <summary>By its ending, or because this job is read from it, whatever its ending.</summary>
    private bool IsRead(string path)
    {
        return s_read.Any(ending => path.TrimEnd(' ', '.').EndsWith(ending, StringComparison.OrdinalIgnoreCase))
            || opened.Room.LocalFiles.Select(local => Opened.Beside(opened.File, local)).Append(opened.File.Shown)
                .Any(read => string.Equals(Place(read), terminal.FullPath(path), StringComparison.OrdinalIgnoreCase)
                    || string.Equals(terminal.FullPath(read), terminal.FullPath(path), StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Every list ends alike in its language; drawings and lists for programs begin alike.</summary>
    private bool IsList(string place)
    {
        try
        {
            return opened.Room.IsList(TextFile.Read(place, place));
        }
        catch (Halt)
        {
            return false;
        }
    }
}
