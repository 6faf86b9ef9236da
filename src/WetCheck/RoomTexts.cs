namespace WetCheck;

/// <summary>What a room is read from: its job file, and the files beside it.</summary>
/// <param name="File">Name of the job file, for places in messages: <c>juniper.job.yaml</c>.</param>
/// <param name="Job">Its text.</param>
public sealed record RoomTexts(string File, string Job)
{
    /// <summary>The text of a file beside the job: its log, its levels, its local changes; null: there is none.</summary>
    public Func<string, string?> Beside { get; init; } = _ => null;

    /// <summary><c>juniper.log.jsonl</c>.</summary>
    public string Log => LogOf(File);

    /// <summary><c>juniper.levels.csv</c>.</summary>
    public string Levels => NameOf(File) + ".levels.csv";

    /// <summary>The log of a job file.</summary>
    public static string LogOf(string file) => NameOf(file) + ".log.jsonl";

    private static string NameOf(string file) => Without(Without(file, ".yaml"), ".job");

    private static string Without(string name, string ending) =>
        name.EndsWith(ending, StringComparison.OrdinalIgnoreCase) ? name[..^ending.Length] : name;
}
