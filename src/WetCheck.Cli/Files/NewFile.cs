namespace WetCheck.Cli.Files;

/// <summary>Writes files that were not there before. What is there is kept.</summary>
internal static class NewFile
{
    public static void Write(string path, string text, Terminal terminal)
    {
        try
        {
            using var stream = new FileStream(terminal.FullPath(path), FileMode.CreateNew, FileAccess.Write);
            using var writer = new StreamWriter(stream);
            writer.Write(text);
        }
        catch (IOException) when (File.Exists(terminal.FullPath(path)))
        {
            throw new Halt(ExitCode.Unwritable, $"{path} is there already, and is kept as it is.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new Halt(ExitCode.Unwritable, $"{path} can't be written. Is the folder there, and may you write in it?");
        }
    }
}
