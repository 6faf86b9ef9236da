using WetCheck.Cli;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Cli;

/// <summary>A folder of its own with the job juniper in it, and the program run there.</summary>
internal sealed class Desk : IDisposable
{
    private static readonly DateTimeOffset Afternoon = new(2026, 11, 25, 16, 5, 0, TimeSpan.Zero);

    public Desk(params (string Name, string Text)[] files)
    {
        Write("juniper.job.yaml", Repository.Read("docs/examples/juniper.job.yaml"));
        foreach (var (name, text) in files)
        {
            Write(name, text);
        }
    }

    public string Folder { get; } = Directory.CreateTempSubdirectory("wetcheck").FullName;

    public string PathOf(string name) => Path.Combine(Folder, name);

    public void Write(string name, string text) => File.WriteAllText(PathOf(name), text);

    /// <summary>What is typed while the program runs, line by line.</summary>
    public string Typed { get; set; } = "";

    public Ran Run(params string[] args)
    {
        using var typed = new StringReader(Typed);
        using var results = new StringWriter();
        using var messages = new StringWriter();
        var code = CommandLine.Run(args, new Terminal(results, messages, Folder, new StoppedClock()) { In = typed });
        return new Ran((int)code, results.ToString(), messages.ToString());
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    private sealed class StoppedClock : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => Afternoon;
    }
}

/// <summary>What a run of the program left behind.</summary>
internal sealed record Ran(int Code, string Results, string Messages);
