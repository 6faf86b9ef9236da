using System.Text;

namespace WetCheck.Cli.Files;

/// <summary>
/// Writes a file whole or not at all: beside its place, onto the disk, then renamed. Whatever happens in between, the
/// old one stands or the new.
/// </summary>
internal static class WholeFile
{
    /// <summary>What a file is told where it is there and may not be replaced.</summary>
    public static string IsThere(string path) => $"{path} is there already, and is kept as it is.";

    /// <param name="isNew">What is there is kept; else it is replaced.</param>
    /// <exception cref="Halt">It can't be written. What was there is as it was.</exception>
    public static void Write(string path, string text, bool isNew, Terminal terminal)
    {
        var full = terminal.FullPath(path);
        var beside = System.IO.Path.Combine(System.IO.Path.GetDirectoryName(full) ?? "", $".wetcheck-{System.IO.Path.GetRandomFileName()}");
        try
        {
            using (var stream = new FileStream(beside, FileMode.CreateNew, FileAccess.Write))
            {
                stream.Write(new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(text));
                stream.Flush(flushToDisk: true);
            }

            KeepRights(full, beside);
            File.Move(beside, full, overwrite: !isNew);
        }
        catch (Exception fault) when (DiskFault.Is(fault))
        {
            TakeAway(beside);
            throw new Halt(ExitCode.Unwritable,
                isNew && System.IO.Path.Exists(full) ? IsThere(path)
                : $"{path} can't be written. {DiskFault.Say(fault)}");
        }
    }

    /// <summary>Who might read or write the old one may the new one.</summary>
    private static void KeepRights(string full, string beside)
    {
        if (!OperatingSystem.IsWindows() && File.Exists(full))
        {
            File.SetUnixFileMode(beside, File.GetUnixFileMode(full));
        }
    }

    private static void TakeAway(string beside)
    {
        try
        {
            File.Delete(beside);
        }
        catch (Exception fault) when (DiskFault.Is(fault))
        {
        }
    }
}
