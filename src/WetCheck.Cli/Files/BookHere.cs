namespace WetCheck.Cli.Files;

/// <summary>The rule book that the words typed ask for.</summary>
internal static class BookHere
{
    /// <param name="folder">Null: the built-in one.</param>
    public static Book Load(string? folder, Terminal terminal) => folder is null ? Book.BuiltIn
        : Book.Read(BookFiles.Read(folder, terminal), folder, told => terminal.Err.WriteLine(told));
}
