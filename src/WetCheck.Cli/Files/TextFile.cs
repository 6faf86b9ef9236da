using System.Text;

namespace WetCheck.Cli.Files;

/// <summary>Reads a file as text, or says where and why it can't be read.</summary>
internal static class TextFile
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <param name="path">Where it is.</param>
    /// <param name="shown">How messages name it.</param>
    public static string Read(string path, string shown)
    {
        var bytes = Bytes(path, shown);
        try
        {
            return bytes.AsSpan() switch
            {
                [0xFF, 0xFE, .. var little] => Encoding.Unicode.GetString(little),
                [0xFE, 0xFF, .. var big] => Encoding.BigEndianUnicode.GetString(big),
                [0xEF, 0xBB, 0xBF, .. var marked] => Strict.GetString(marked),
                var plain => Strict.GetString(plain),
            };
        }
        catch (DecoderFallbackException)
        {
            throw new Halt(ExitCode.Unreadable,
                $"{shown}:{FirstBadLine(bytes)}\n    A character on this line is not UTF-8. Save the file as UTF-8.");
        }
    }

    private static byte[] Bytes(string path, string shown)
    {
        if (!SystemCalls.IsPlainFile(path) && !Directory.Exists(path))
        {
            throw new Halt(ExitCode.Unreadable,
                $"{shown} is no plain file but a pipe or a device. Save what it gives in a file, and name that.");
        }

        try
        {
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0);
            return BoundedRead.Bytes(file)
                ?? throw new Halt(ExitCode.Unreadable, $"{shown} is larger than 4 MB. Is it the file you meant?");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new Halt(ExitCode.Unreadable, $"{shown} can't be read. Is it there, and may you open it?");
        }
    }

    private static int FirstBadLine(byte[] bytes)
    {
        var line = 1;
        foreach (var part in Encoding.UTF8.GetString(bytes))
        {
            if (part == '\uFFFD')
            {
                break;
            }

            line += part == '\n' ? 1 : 0;
        }

        return line;
    }
}
