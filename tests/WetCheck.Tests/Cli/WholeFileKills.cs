using System.Diagnostics;
using WetCheck.Cli;

namespace WetCheck.Tests.Cli;

/// <summary>Killed at any moment, a file that is written is the old one or the new, whole.</summary>
public sealed class WholeFileKills(ITestOutputHelper output)
{
    private static readonly int Times = Depth.Of(daily: 3, deep: 20, night: 200);

    [Fact]
    public void A_list_is_the_old_one_or_the_new()
    {
        var chance = new Random(20261125);
        using var desk = new Desk();
        desk.Run("punch", "juniper", "-o", "j.md").Code.Should().Be(1);
        var (old, renewed) = (File.ReadAllText(desk.PathOf("j.md")), 0);
        for (var i = 0; i < Times; i++)
        {
            File.WriteAllText(desk.PathOf("j.md"), old);
            Killed(desk, chance, "", "punch", "juniper", "-o", "j.md");
            var now = File.ReadAllText(desk.PathOf("j.md"));
            renewed += now == old ? 0 : 1;
            Lines(now).Should().Equal(Lines(old), "all but the time is the same in both");
        }

        output.WriteLine($"{Times} kills: {renewed} new, {Times - renewed} old.");
    }

    [Fact]
    public void A_job_that_is_started_is_there_whole_or_not_at_all()
    {
        var chance = new Random(20261126);
        const string answers = "liner under mortar\nflood test\n60 x 36\nIRC 2021\n";
        using var whole = new Desk { Typed = answers };
        whole.Run("job", "new", "elm").Code.Should().NotBe(5);
        var (job, sheet) = (File.ReadAllText(whole.PathOf("elm.job.yaml")), File.ReadAllText(whole.PathOf("elm.answers.html")));
        var made = 0;
        for (var i = 0; i < Times; i++)
        {
            using var desk = new Desk();
            Killed(desk, chance, answers, "job", "new", "elm");
            new[] { null, job }.Should().Contain(Text(desk, "elm.job.yaml"));
            new[] { null, sheet }.Should().Contain(Text(desk, "elm.answers.html"));
            made += File.Exists(desk.PathOf("elm.job.yaml")) ? 1 : 0;
        }

        output.WriteLine($"{Times} kills: {made} jobs made.");
    }

    private static string? Text(Desk desk, string name) => File.Exists(desk.PathOf(name)) ? File.ReadAllText(desk.PathOf(name)) : null;

    private static string[] Lines(string list) =>
        [.. list.Split('\n')
        .Where(line => !line.Contains(" am", StringComparison.Ordinal)
        && !line.Contains(" pm", StringComparison.Ordinal))];

    /// <summary>
    /// Strikes at a random moment of the writing: counted from the first file that stirs, not from a clock. One behind
    /// the end is a kill too.
    /// </summary>
    private static void Killed(Desk desk, Random chance, string typed, params string[] words)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(Terminal).Assembly.Location, .. words])
        {
            WorkingDirectory = desk.Folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var run = Process.Start(start)!;
        run.StandardInput.Write(typed);
        run.StandardInput.Close();
        using var watch = new FileSystemWatcher(desk.Folder) { EnableRaisingEvents = true };

        // The first file that stirs is the one beside the list; then it is a matter of a moment.
        watch.WaitForChanged(WatcherChangeTypes.All, 60_000);
        Thread.SpinWait(chance.Next(200_000));
        run.Kill();
        run.WaitForExit();
    }
}
