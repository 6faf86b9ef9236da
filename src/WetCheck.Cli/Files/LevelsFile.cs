namespace WetCheck.Cli.Files;

/// <summary>The table of levels beside a job file: <c>juniper.levels.csv</c> beside <c>juniper.job.yaml</c>.</summary>
internal sealed record LevelsFile(string Shown, string? Text)
{
    /// <summary>Its text is null where there is none.</summary>
    public static LevelsFile Of(JobFile job, Terminal terminal)
    {
        var shown = LogFile.Beside(job.Shown, ".levels.csv");
        var path = terminal.FullPath(shown);
        return new LevelsFile(shown, File.Exists(path) ? TextFile.Read(path, shown) : null);
    }
}
