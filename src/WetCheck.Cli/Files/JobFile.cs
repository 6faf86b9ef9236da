
namespace WetCheck.Cli.Files;

/// <summary>A job file and the way messages name it.</summary>
internal sealed record JobFile(string Shown, string Text)
{
    private const string Ending = ".job.yaml";
    private const string ToTry = "\n    wetcheck job sample          writes an invented one, to try the commands on.";
    private const string ToStart = "\n    wetcheck job new larkspur    starts one, with five questions." + ToTry;

    /// <summary>JOB is a path, or a name: <c>juniper</c> is <c>juniper.job.yaml</c> here. None: the one job of the folder.</summary>
    public static JobFile Find(string? job, string command, Terminal terminal)
    {
        var shown = job is null || Directory.Exists(terminal.FullPath(job))
            ? OnlyOneIn(job ?? "", command, terminal)
            : Named(job, command, terminal);
        return new JobFile(shown, TextFile.Read(terminal.FullPath(shown), shown));
    }

    private static string Named(string job, string command, Terminal terminal)
    {
        if (File.Exists(terminal.FullPath(job)))
        {
            return job;
        }

        var byName = job + Ending;
        if (File.Exists(terminal.FullPath(byName)))
        {
            return byName;
        }

        var wanted = job.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) ? job : byName;
        var folder = Path.GetDirectoryName(job) ?? "";
        var others = JobsIn(folder, terminal);
        if (others.Contains(wanted))
        {
            throw new Halt(ExitCode.Unreadable, $"{wanted} can't be read. Is it there, and may you open it?");
        }

        var near = Nearest.Of(wanted, others);
        throw new Halt(ExitCode.Unreadable, $"There is no file {wanted}{(folder.Length == 0 ? " here" : "")}."
            + (near is not null ? $" Nearest: {near}.\n    wetcheck {command} {Short(near)}"
                : others.Count > 0 ? $" There is {string.Join(", ", others.Take(5))}."
                : ToStart));
    }

    private static string OnlyOneIn(string folder, string command, Terminal terminal)
    {
        var jobs = JobsIn(folder, terminal);
        var where = folder.Length == 0 ? "here" : "in " + folder;
        return jobs switch
        {
            [var only] => only,
            [] => throw new Halt(ExitCode.TypedWrong,
                $"There is no job file {where}.{ToStart}\n    wetcheck {command} PATH{Ending}   takes one from elsewhere."),
            _ => throw new Halt(ExitCode.TypedWrong, $"There are {jobs.Count} job files {where}. Say which one:\n"
                + string.Join('\n', jobs.Take(9).Select(path => $"    wetcheck {command} {Short(path)}"))
                + (jobs.Any(path => Path.GetFileName(path) == "juniper" + Ending) ? "" : ToTry)),
        };
    }

    private static List<string> JobsIn(string folder, Terminal terminal)
    {
        var full = terminal.FullPath(folder);
        try
        {
            return Directory.Exists(full)
                ? [.. Directory.GetFiles(full, "*" + Ending)
                    .Select(file => Path.Combine(folder, Path.GetFileName(file))).Order(StringComparer.Ordinal)]
                : [];
        }
        catch (Exception fault) when (DiskFault.Is(fault))
        {
            throw new Halt(ExitCode.Unreadable, $"{(folder.Length == 0 ? "This folder" : folder)} can't be looked into. May you open it?");
        }
    }

    private static string Short(string path)
    {
        var name = path[..^Ending.Length];
        return name.Contains(' ', StringComparison.Ordinal) ? $"\"{name}\"" : name;
    }
}
