using System.Text;
using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Cli.Files;

/// <summary>The log beside a job file. It only grows. It is held while one answer is written, so that two programs never write at once.</summary>
internal sealed class LogFile(string path, string shown)
{
    /// <summary>Another program holds the log for a moment only.</summary>
    private const int Tries = 20;

    private static readonly TimeSpan Moment = TimeSpan.FromMilliseconds(25);

    public static LogFile Of(JobFile job, Terminal terminal) => new(terminal.FullPath(Beside(job.Shown)), Beside(job.Shown));

    /// <summary><c>juniper.log.jsonl</c> beside <c>juniper.job.yaml</c>.</summary>
    public static string Beside(string job) => Without(Without(job, ".yaml"), ".job") + ".log.jsonl";

    /// <summary>What stands in it; empty where there is none.</summary>
    public static string TextBeside(JobFile job, Terminal terminal)
    {
        var shown = Beside(job.Shown);
        return File.Exists(terminal.FullPath(shown)) ? TextFile.Read(terminal.FullPath(shown), shown) : "";
    }

    /// <summary>Adds an answer. When this returns it is on the disk; when it can't be kept the answer is repeated, so that nothing is lost.</summary>
    /// <returns>The answer with its place in the log.</returns>
    public LoggedAnswer Keep(LoggedAnswer answer)
    {
        try
        {
            using var file = Open();
            return Add(answer, file);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            throw new Halt(ExitCode.Unwritable, $"{shown} can't be written. Does another program write on it, is the disk full, may you write there?"
                + $"\nNot kept:  {answer.Path}: {answer.Read}");
        }
    }

    private LoggedAnswer Add(LoggedAnswer answer, FileStream file)
    {
        var before = new byte[file.Length];
        file.ReadExactly(before);
        var line = answer.ToJson();

        // A line that was torn is ended, so that this answer has a line of its own.
        var end = before is [.., not (byte)'\n'] ? "\n" : "";
        try
        {
            file.Write(Encoding.UTF8.GetBytes($"{end}{line}\n"));
            file.Flush(flushToDisk: true);
        }
        catch (IOException)
        {
            // Half an answer is taken off again; where even that can't be done the reader leaves it out.
            file.SetLength(before.Length);
            throw;
        }

        var number = before.Count(one => one == '\n') + end.Length + 1;
        return answer with { At = new At(shown, number, line.IndexOf("\"read\":\"", StringComparison.Ordinal) + 9), Line = line };
    }

    private FileStream Open()
    {
        for (var tries = 1; ; tries++)
        {
            try
            {
                return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, bufferSize: 0);
            }
            catch (IOException) when (tries < Tries)
            {
                Thread.Sleep(Moment);
            }
        }
    }

    private static string Without(string name, string ending) =>
        name.EndsWith(ending, StringComparison.OrdinalIgnoreCase) ? name[..^ending.Length] : name;
}
