using System.Text;

namespace WetCheck.Cli.Files;

/// <summary>
/// The log beside a job file. It only grows. It is held while one answer is written, so that two programs never write at once; what another
/// one wrote in between is read first.
/// </summary>
internal sealed class LogFile(string path, string shown) : IAnswerLog
{
    /// <summary>Another program holds the log for a moment only.</summary>
    private const int Tries = 60;

    private static readonly TimeSpan Moment = TimeSpan.FromMilliseconds(25);

    private byte[] _known = [];

    public static LogFile Of(JobFile job, Terminal terminal) =>
        new(terminal.FullPath(RoomTexts.LogOf(job.Shown)), RoomTexts.LogOf(job.Shown));

    /// <summary>What stands in it; empty where there is none. Bytes that are no text spoil their own line only.</summary>
    public string Read() => Encoding.UTF8.GetString(_known = Bytes());

    /// <summary>The text as it is now, where it is another than this program last read or wrote; else null.</summary>
    public string? News() => Bytes() is var now && now.AsSpan().SequenceEqual(_known) ? null : Encoding.UTF8.GetString(_known = now);

    /// <summary>When this returns the line is on the disk; when it can't be kept the answer is repeated, so that nothing is lost.</summary>
    public (string Text, bool IsNews) Keep(string answer, Func<string, string> line)
    {
        try
        {
            MustStandHere(ExitCode.Unwritable, $"\nNot kept:  {answer}");
            using var file = Open(FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            return Add(answer, line, file);
        }
        catch (Exception e) when (DiskFault.Is(e))
        {
            throw new Halt(ExitCode.Unwritable,
                $"{shown} can't be written. Does another program write on it, is the disk full, may you write there?"
                + $"\nNot kept:  {answer}");
        }
    }

    private (string Text, bool IsNews) Add(string answer, Func<string, string> line, FileStream file)
    {
        var before = BoundedRead.Bytes(file) ?? throw TooMuch($"\nNot kept:  {answer}");

        // A line that was torn is ended, so that this answer has a line of its own.
        var end = before is [.., not (byte)'\n'] ? "\n" : "";
        var added = Encoding.UTF8.GetBytes($"{end}{line(Encoding.UTF8.GetString(before))}\n");
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
        return (Encoding.UTF8.GetString(_known), isNews);
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
            MustStandHere(ExitCode.Unreadable, "");
            using var file = Open(FileMode.Open, FileAccess.Read, FileShare.Read);
            return BoundedRead.Bytes(file) ?? throw TooMuch("");
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

    /// <summary>
    /// The log is a plain file beside its job. A link to another folder is not followed: whoever made it could have an
    /// answer written anywhere.
    /// One that leads nowhere is as good as none to read from.
    /// </summary>
    private void MustStandHere(ExitCode code, string lost)
    {
        var link = new FileInfo(path);
        if (link.LinkTarget is { } target
            && (code == ExitCode.Unwritable || link.ResolveLinkTarget(returnFinalTarget: true) is { Exists: true })
            && System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(target,
                System.IO.Path.GetDirectoryName(path)!)) != System.IO.Path.GetDirectoryName(path))
        {
            throw new Halt(code, $"{shown} is a link to another folder. The log stands beside its job: put the file itself there.{lost}");
        }

        if (!Directory.Exists(path) && !SystemCalls.IsPlainFile(path))
        {
            throw new Halt(code, $"{shown} is no plain file but a pipe or a device. The log stands beside its job: move this away.{lost}");
        }
    }

    private Halt TooMuch(string lost) => new(
        lost.Length > 0 ? ExitCode.Unwritable : ExitCode.Unreadable, $"{shown} is larger than 4 MB. Is it the log of this job?{lost}");

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
}
