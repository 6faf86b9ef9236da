namespace WetCheck.Cli.Files;

/// <summary>A job file and the way messages name it.</summary>
internal sealed record JobFile(string Shown, string Text)
{
    private const string Ending = ".job.yaml";

    /// <summary>JOB is a path, or a name: <c>juniper</c> is <c>juniper.job.yaml</c> here. None: the one job of the folder.</summary>
    public static JobFile Find(string? job, string command, Terminal terminal)
    {
        var shown = job is null || Directory.Exists(terminal.FullPath(job))
            ? OnlyOneIn(job ?? "", command, terminal)
            : Named(job, terminal);
        return new JobFile(shown, TextFile.Read(terminal.FullPath(shown), shown));
    }

    private static string Named(string job, Terminal terminal)
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
        throw new Halt(ExitCode.Unreadable, $"There is no file {wanted}{(folder.Length == 0 ? " here" : "")}."
            + (others.Count == 0 ? "" : $" There is {string.Join(", ", others.Take(5))}."));
    }

    private static string OnlyOneIn(string folder, string command, Terminal terminal)
    {
        var jobs = JobsIn(folder, terminal);
        var where = folder.Length == 0 ? "here" : "in " + folder;
        return jobs switch
        {
            [var only] => only,
            [] => throw new Halt(ExitCode.TypedWrong, $"There is no job file {where}. Say which one, by its path:\n    wetcheck {command} PATH{Ending}"),
            _ => throw new Halt(ExitCode.TypedWrong, $"There are {jobs.Count} job files {where}. Say which one:\n"
                + string.Join('\n', jobs.Take(9).Select(path => $"    wetcheck {command} {Short(path)}"))),
        };
    }

    private static List<string> JobsIn(string folder, Terminal terminal)
    {
        var full = terminal.FullPath(folder);
        return Directory.Exists(full)
            ? [.. Directory.GetFiles(full, "*" + Ending).Select(file => Path.Combine(folder, Path.GetFileName(file))).Order(StringComparer.Ordinal)]
            : [];
    }

    private static string Short(string path)
    {
        var name = path[..^Ending.Length];
        return name.Contains(' ', StringComparison.Ordinal) ? $"\"{name}\"" : name;
    }
}
