namespace WetCheck.Cli.Files;

/// <summary>The files of a folder that is a rule book, as text, with their paths within it: <c>liner/turn-up.yaml</c>.</summary>
internal static class BookFiles
{
    public static IReadOnlyList<(string Path, string Text)> Read(string folder, Terminal terminal)
    {
        var full = terminal.FullPath(folder);
        if (!File.Exists(Path.Combine(full, "book.yaml")))
        {
            throw new Halt(ExitCode.Unreadable, $"{folder} is no rule book: there is no {Path.Combine(folder, "book.yaml")}.");
        }

        var files = new List<(string Path, string Text)>();
        foreach (var path in Directory.EnumerateFiles(full, "*", SearchOption.AllDirectories))
        {
            var name = Path.GetRelativePath(full, path).Replace('\\', '/');
            if (!name.Split('/').Any(part => part.StartsWith('.')))
            {
                files.Add((name, TextFile.Read(path, Path.Combine(folder, name))));
            }
        }

        return files;
    }
}
