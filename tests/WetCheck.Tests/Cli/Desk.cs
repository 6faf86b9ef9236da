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

    /// <summary>With a copy of the rule book beside the job.</summary>
    public static Desk WithBook()
    {
        var desk = new Desk();
        foreach (var file in Repository.Files.Where(file => file.StartsWith("rules/", StringComparison.Ordinal)))
        {
            Directory.CreateDirectory(Path.GetDirectoryName(desk.PathOf(file))!);
            desk.Write(file, Repository.Read(file));
        }

        return desk;
    }

    public string Folder { get; } = Directory.CreateTempSubdirectory("wetcheck").FullName;

    public string PathOf(string name) => Path.Combine(Folder, name);

    public void Write(string name, string text) => File.WriteAllText(PathOf(name), text);

    /// <summary>What is typed while the program runs, line by line.</summary>
    public string Typed { get; set; } = "";

    public TimeProvider Clock { get; } = new TickingClock();

    /// <summary>A hand types, not another program.</summary>
    public bool IsHand { get; init; }

    public Ran Run(params string[] args)
    {
        using var typed = new StringReader(Typed);
        using var results = new StringWriter();
        using var messages = new StringWriter();
        var code = CommandLine.Run(args, new Terminal(results, messages, Folder, Clock) { In = typed, IsHand = IsHand });
        return new Ran((int)code, results.ToString(), messages.ToString());
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    /// <summary>The same afternoon always, a moment later each time that it is read.</summary>
    private sealed class TickingClock : TimeProvider
    {
        private int _ticks;

        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => Afternoon.AddMilliseconds(Interlocked.Increment(ref _ticks));
    }
}

/// <summary>What a run of the program left behind.</summary>
internal sealed record Ran(int Code, string Results, string Messages);
