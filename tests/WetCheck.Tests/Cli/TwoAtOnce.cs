using WetCheck.Cli;
using WetCheck.Intake;

namespace WetCheck.Tests.Cli;

/// <summary>Answers given at once, or by a clock that stands still, each count.</summary>
public sealed class TwoAtOnce
{
    [Fact]
    public void An_answer_kept_a_moment_after_one_given_later_is_no_clock_put_back()
    {
        var log = Line("2026-11-25T16:05:02.000+00:00", "3") + Line("2026-11-25T16:05:01.200+00:00", "4");
        LogReader.Read("j.log.jsonl", log).Problems.Should().BeEmpty();
        LogReader.Read("j.log.jsonl", log).Answers[1].Counts.Should().Be("2026-11-25T16:05:02.000+00:00");
        LogReader.Read("j.log.jsonl", Line("2026-11-25T16:05:02Z", "3") + Line("2026-11-25T16:04:00Z", "4")).Problems
            .Should().ContainSingle().Which.Code.Should().Be("log-jumped");
    }

    [Fact]
    public void The_same_answer_twice_by_a_clock_that_stands_is_kept_twice()
    {
        using var desk = new Desk();
        using var results = new StringWriter();
        var terminal = new Terminal(results, TextWriter.Null, desk.Folder, new Standing());
        for (var i = 0; i < 3; i++)
        {
            CommandLine.Run(["look", "juniper", "nails.left", "3 above"], terminal);
        }

        results.ToString().Split("Kept.").Should().HaveCount(4);
        var (answers, problems) = LogReader.Read("juniper.log.jsonl", File.ReadAllText(desk.PathOf("juniper.log.jsonl")));
        problems.Should().BeEmpty();
        answers.Should().HaveCount(3);
    }

    private static string Line(string time, string read) => $"{{\"at\":\"{time}\",\"path\":\"liner.left\",\"read\":\"{read}\"}}\n";

    private sealed class Standing : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => new(2026, 11, 25, 16, 5, 0, TimeSpan.Zero);
    }
}
