using System.Diagnostics;
using WetCheck.Cli;
using WetCheck.Intake;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Cli;

/// <summary>An answer of which the program said Kept is on the disk, whatever becomes of the program.</summary>
public sealed class KillTests(ITestOutputHelper output)
{
    private static readonly int Times = Depth.Of(daily: 3, deep: 20, night: 200);

    /// <summary>One answer, mended again and again, so that the kill strikes in the middle of a stream of them.</summary>
    private static readonly string[] Answers =
        [.. Enumerable.Range(0, 60).Select(i => $"{(i == 0 ? "" : "again ")}{(i % 2 == 0 ? "cut" : "folded")}")];

    [Fact]
    public void Every_answer_that_was_Kept_is_in_the_log_after_a_kill()
    {
        var chance = new Random(20261125);
        var (said, stood, torn, within) = (0, 0, 0, 0);
        for (var i = 0; i < Times; i++)
        {
            using var desk = new Desk(("five.job.yaml", Repository.Read("docs/examples/five-answers.job.yaml")));
            var kept = KilledAfter(chance.Next(0, 50), TimeSpan.FromMilliseconds(chance.Next(25)), desk);
            var log = desk.PathOf("five.log.jsonl");
            var (answers, problems) = LogReader.Read("five.log.jsonl", File.Exists(log) ? File.ReadAllText(log) : "");
            answers.Count.Should().BeInRange(kept, kept + 1, "an answer stands on the disk before Kept is said, and the next one after it");
            answers.Select(answer => answer.Read).Should()
                .Equal(Answers.Take(answers.Count).Select(answer => "left-back " + answer.Split(' ')[^1]));
            problems.Where(problem => problem.Effect != Model.Effect.Asked).Select(problem => problem.Code).Should()
                .BeSubsetOf(["log-torn"]);
            (said, stood, torn, within) =
                (said + kept, stood + answers.Count, torn + problems.Count,
                within + (kept > 0 && kept < Answers.Length ? 1 : 0));
        }

        output.WriteLine($"{Times} kills, {within} of them within the stream; {said} answers said to be Kept, {stood} "
            + $"in the logs, {torn} lines torn.");
        within.Should().BeGreaterThan(Times / 2);
    }

    /// <summary>
    /// Answers question after question and kills the program a moment after one was kept; how many it had said were
    /// Kept.
    /// </summary>
    private static int KilledAfter(int answers, TimeSpan moment, Desk desk)
    {
        var program = new ProcessStartInfo("dotnet", [typeof(Terminal).Assembly.Location, "look", "five"])
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
}
