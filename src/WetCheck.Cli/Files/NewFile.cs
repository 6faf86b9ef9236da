namespace WetCheck.Cli.Files;

/// <summary>Writes files that were not there before. What is there is kept.</summary>
internal static class NewFile
{
    public static void Write(string path, string text, Terminal terminal) => WholeFile.Write(path, text, isNew: true, terminal);
}
