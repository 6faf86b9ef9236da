using System.Diagnostics;
using WetCheck.Cli;
using WetCheck.Intake;

namespace WetCheck.Tests.Cli;

/// <summary>An answer of which the program said Kept is on the disk, whatever becomes of the program.</summary>
public sealed class KillTests
{
    private const int Times = 20;

    [Fact]
    public void Every_answer_that_was_Kept_is_in_the_log_after_a_kill()
    {
        var chance = new Random(20261125);
        for (var i = 0; i < Times; i++)
        {
            using var desk = new Desk();
            var kept = KilledAfter(chance.Next(1, 9), TimeSpan.FromMilliseconds(chance.Next(12)), desk);
            var log = desk.PathOf("juniper.log.jsonl");
            var (answers, problems) = LogReader.Read("juniper.log.jsonl", File.Exists(log) ? File.ReadAllText(log) : "");
            answers.Count.Should().BeGreaterThanOrEqualTo(kept);
            problems.Count.Should().BeLessThanOrEqualTo(1, "only the last line may be torn");
        }
    }

    /// <summary>Answers question after question and kills the program a moment after one was kept; how many it had said were Kept.</summary>
    private static int KilledAfter(int answers, TimeSpan moment, Desk desk)
    {
        var program = new ProcessStartInfo("dotnet", [typeof(Terminal).Assembly.Location, "look", "juniper"])
        {
            WorkingDirectory = desk.Folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var run = Process.Start(program)!;
        foreach (var answer in Answers)
        {
            run.StandardInput.WriteLine(answer);
        }

        run.StandardInput.Flush();
        var kept = 0;
        while (kept < answers && run.StandardOutput.ReadLine() is { } line)
        {
            kept += line.StartsWith("Kept.", StringComparison.Ordinal) ? 1 : 0;
        }

        Thread.Sleep(moment);
        run.Kill();
        kept += run.StandardOutput.ReadToEnd().Split('\n').Count(line => line.StartsWith("Kept.", StringComparison.Ordinal));
        run.WaitForExit();
        return kept;
    }

    /// <summary>In the order of juniper's looks; what is no answer to a question is asked again.</summary>
    private static readonly string[] Answers = ["3-1/4", "all", "yes", "none", "all", "24 h", "1", "1", "1", "1"];
}
