namespace WetCheck.Cli.Files;

/// <summary>The files of a folder that is a rule book, as text, with their paths within it: <c>liner/turn-up.yaml</c>.</summary>
internal static class BookFiles
{
    /// <summary>Folders within folders: a link that leads back up ends here.</summary>
    private const int Deepest = 8;

    public static IReadOnlyList<(string Path, string Text)> Read(string folder, Terminal terminal)
    {
        var full = terminal.FullPath(folder);
        if (!File.Exists(Path.Combine(full, "book.yaml")))
        {
            throw new Halt(ExitCode.Unreadable, $"{folder} is no rule book: there is no {Path.Combine(folder, "book.yaml")}.");
        }

        var files = new List<(string Path, string Text)>();
        foreach (var path in Under(full, folder))
        {
            var name = Path.GetRelativePath(full, path).Replace('\\', '/');
            if (!name.Split('/').Any(part => part.StartsWith('.')))
            {
                files.Add((name, TextFile.Read(path, Path.Combine(folder, name))));
            }
        }

        return files;
    }

    private static string[] Under(string full, string folder)
    {
        try
        {
            return [.. Directory.EnumerateFiles(full, "*",
                new EnumerationOptions { RecurseSubdirectories = true, MaxRecursionDepth = Deepest,
                AttributesToSkip = 0, IgnoreInaccessible = false })];
        }
        catch (Exception fault) when (DiskFault.Is(fault))
        {
            throw new Halt(ExitCode.Unreadable, $"{folder} can't be looked into. May you open it, and all folders in it?");
        }
    }
}
