using System.Text;
using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Cli.Files;

/// <summary>
/// The log beside a job file. It only grows. It is held while one answer is written, so that two programs never write at once; what another
/// one wrote in between is read first.
/// </summary>
internal sealed class LogFile(string path, string shown)
{
    /// <summary>Another program holds the log for a moment only.</summary>
    private const int Tries = 60;

    private static readonly TimeSpan Moment = TimeSpan.FromMilliseconds(25);

    private byte[] _known = [];

    public string Shown => shown;

    public static LogFile Of(JobFile job, Terminal terminal) => new(terminal.FullPath(Beside(job.Shown)), Beside(job.Shown));

    /// <summary><c>juniper.log.jsonl</c> beside <c>juniper.job.yaml</c>.</summary>
    public static string Beside(string job, string ending = ".log.jsonl") => Without(Without(job, ".yaml"), ".job") + ending;

    /// <summary>What stands in it; empty where there is none. Bytes that are no text spoil their own line only.</summary>
    public string Text() => Encoding.UTF8.GetString(_known = Bytes());

    /// <summary>The text as it is now, where it is another than this program last read or wrote; else null.</summary>
    public string? News() => Bytes() is var now && now.AsSpan().SequenceEqual(_known) ? null : Encoding.UTF8.GetString(_known = now);

    /// <summary>Adds an answer. When this returns it is on the disk; when it can't be kept the answer is repeated, so that nothing is lost.</summary>
    /// <returns>The answer with its place in the log, and the whole text where another program had written meanwhile.</returns>
    public (LoggedAnswer Answer, string? News) Keep(LoggedAnswer answer)
    {
        try
        {
            using var file = Open(FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            return Add(answer, file);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentOutOfRangeException)
        {
            // The last: what .NET makes of a file that has reached the size a system allows.
            throw new Halt(ExitCode.Unwritable, $"{shown} can't be written. Does another program write on it, is the disk full, may you write there?"
                + $"\nNot kept:  {answer.Path}: {answer.Read}");
        }
    }

    private (LoggedAnswer Answer, string? News) Add(LoggedAnswer answer, FileStream file)
    {
        var before = new byte[file.Length];
        file.ReadExactly(before);
        var line = answer.ToJson();

        // A line that was torn is ended, so that this answer has a line of its own.
        var end = before is [.., not (byte)'\n'] ? "\n" : "";
        var added = Encoding.UTF8.GetBytes($"{end}{line}\n");
        try
        {
            file.Write(added);
            file.Flush(flushToDisk: true);
        }
        catch
        {
            TakeOff(file, before.Length);
            throw;
        }

        var isNews = !before.AsSpan().SequenceEqual(_known);
        _known = [.. before, .. added];
        var number = before.Count(one => one == '\n') + end.Length + 1;
        var at = new At(shown, number, line.IndexOf("\"read\":\"", StringComparison.Ordinal) + 9);
        return (answer with { At = at, Line = line }, isNews ? Encoding.UTF8.GetString(_known) : null);
    }

    /// <summary>Half an answer is taken off again; where even that can't be done the reader leaves it out.</summary>
    private static void TakeOff(FileStream file, long length)
    {
        try
        {
            file.SetLength(length);
        }
        catch (IOException)
        {
        }
    }

    private byte[] Bytes()
    {
        try
        {
            using var file = Open(FileMode.Open, FileAccess.Read, FileShare.Read);
            var bytes = new byte[file.Length];
            file.ReadExactly(bytes);
            return bytes;
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException || Directory.Exists(path))
        {
            return [];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new Halt(ExitCode.Unreadable, $"{shown} can't be read. Does another program hold it, and may you open it?");
        }
    }

    private FileStream Open(FileMode mode, FileAccess access, FileShare share)
    {
        for (var tries = 1; ; tries++)
        {
            try
            {
                return new FileStream(path, mode, access, share, bufferSize: 0);
            }
            catch (IOException e) when (tries < Tries && e is not (FileNotFoundException or DirectoryNotFoundException))
            {
                Thread.Sleep(Moment);
            }
        }
    }

    private static string Without(string name, string ending) =>
        name.EndsWith(ending, StringComparison.OrdinalIgnoreCase) ? name[..^ending.Length] : name;
}
