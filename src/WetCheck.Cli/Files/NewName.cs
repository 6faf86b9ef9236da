namespace WetCheck.Cli.Files;

/// <summary>The name of a job that is started, and its files.</summary>
/// <param name="Job">As it was typed.</param>
/// <param name="Path">Of its files, without their endings: a name that can be typed after a command as it stands.</param>
internal sealed record NewName(string Job, string Path)
{
    private const string Ending = ".job.yaml";

    public string File => Path + Ending;

    public string Sheet => Path + ".answers.html";

    /// <exception cref="Halt">There is no name in it.</exception>
    public static NewName Of(string typed)
    {
        var whole = typed.Trim();
        whole = whole.EndsWith(Ending, StringComparison.OrdinalIgnoreCase) ? whole[..^Ending.Length] : whole;
        var name = System.IO.Path.GetFileName(whole);
        var file = OneWord(name);
        return file.Length == 0 || NewRoom.IsUnnamed(whole)
            ? throw new Halt(ExitCode.TypedWrong, "A job needs a name; all else may be unknown.\n    wetcheck job new larkspur")
            : new NewName(name, System.IO.Path.Combine(System.IO.Path.GetDirectoryName(whole) ?? "", file));
    }

    /// <summary>What is there is kept, an old log too: its answers would be taken for answers of this job.</summary>
    public void MustBeFree(Terminal terminal)
    {
        if (System.IO.Path.GetDirectoryName(Path) is { Length: > 0 } folder && !Directory.Exists(terminal.FullPath(folder)))
        {
            throw new Halt(ExitCode.Unwritable,
                $"There is no folder {folder}. Make it first, or leave it out:\n    wetcheck job new {System.IO.Path.GetFileName(Path)}");
        }

        if (new[] { File, Sheet, RoomTexts.LogOf(File) }
            .FirstOrDefault(path => System.IO.Path.Exists(terminal.FullPath(path))) is { } there)
        {
            throw new Halt(ExitCode.Unwritable, WholeFile.IsThere(there)
                + (there == File ? $"\n    wetcheck walk {Word(Path)}        holds it against the book." : "")
                + $"\n    wetcheck job new {Word(Path + "-2")}   starts another.");
        }
    }

    /// <summary>As a shell takes it for one word: a folder may have a blank in its name.</summary>
    private static string Word(string path) => path.Contains(' ', StringComparison.Ordinal) ? $"\"{path}\"" : path;

    /// <summary>"Larkspur, guest bath" as <c>Larkspur-guest-bath</c>.</summary>
    private static string OneWord(string name) =>
        string.Join('-', string.Concat(name.Select(c => char.IsLetterOrDigit(c) || c is '.' or '_' or '-' ? c : ' '))
        .Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries)).Trim('.', '_');
}
