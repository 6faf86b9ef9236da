namespace WetCheck.Cli.Files;

/// <summary>Writes a list into a file.</summary>
internal static class ListFile
{
    public static void Write(string path, string text, Terminal terminal)
    {
        try
        {
            File.WriteAllText(terminal.FullPath(path), text);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new Halt(ExitCode.Unwritable, $"{path} can't be written. Is the folder there, and may you write in it?");
        }
    }
}
