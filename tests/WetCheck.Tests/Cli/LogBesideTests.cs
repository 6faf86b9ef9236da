using System.Text;
using WetCheck.Cli;
using WetCheck.Cli.Files;
using WetCheck.Intake;

namespace WetCheck.Tests.Cli;

/// <summary>What else may happen to a log while it is used: nothing that was kept is lost, and what happened is said.</summary>
public sealed class LogBesideTests
{
    [Fact]
    public void Two_that_look_at_one_job_hear_of_each_other()
    {
        using var desk = new Desk();
        var said = Looks(desk, "behind each", () => desk.Run("look", "juniper", "208", "open"), "");
        said.Should().Contain("Somebody else kept 1 meanwhile: drain.weeps: open.").And.Contain("208 OK");
        Log(desk).Should().HaveCount(2);
        var waited =
            Looks(desk, "", () => desk.Run("look", "juniper", "216", "40 mil"),
            () => desk.Run("look", "juniper", "liner.right", "3"), "");
        waited.Should().Contain("meanwhile: liner.right: 3.");
    }

    [Fact]
    public void A_log_that_is_gone_is_told_with_what_stood_in_it()
    {
        using var desk = new Desk();
        var said = Looks(desk, "behind each", () => File.Delete(desk.PathOf("juniper.log.jsonl")), "");
        said.Should().Contain("no longer in it").And.Contain("shower.blocking: behind each");
        File.Exists(desk.PathOf("juniper.log.jsonl")).Should().BeFalse();
    }

    [Fact]
    public void A_log_torn_within_a_character_is_read_and_added_to()
    {
        using var desk = new Desk();
        desk.Run("look", "juniper", "214-D", "3");
        File.AppendAllBytes(desk.PathOf("juniper.log.jsonl"),
            [.. Encoding.UTF8.GetBytes("{\"at\":\"2026-11-25T16:06:00Z\",\"path\":\"liner.left\",\"read\":\"3"), 0xC2]);
        var walk = desk.Run("walk", "juniper");
        walk.Code.Should().Be(4);
        walk.Messages.Should().StartWith("juniper.log.jsonl:2:1");
        walk.Results.Should().Contain("NOT READY");
        desk.Run("look", "juniper", "208", "open").Results.Should().StartWith("Kept. 208 OK");
        LogReader.Read("juniper.log.jsonl", File.ReadAllText(desk.PathOf("juniper.log.jsonl"))).Answers.Should().HaveCount(2);
    }

    [Fact]
    public void A_log_from_another_editor_with_a_mark_and_its_own_line_ends_is_read()
    {
        using var desk = new Desk();
        File.WriteAllText(desk.PathOf("juniper.log.jsonl"),
            "{\"at\":\"2026-11-25T16:00:00Z\",\"path\":\"drain.weeps\",\"read\":\"open\",\"replaces\":\"x\"}\r\n",
            new UTF8Encoding(encoderShouldEmitUTF8Identifier: true));
        desk.Run("look", "juniper", "214-D", "3").Messages.Should().BeEmpty();
        desk.Run("why", "juniper", "208").Results.Should().Contain("OK");
    }

    [Fact]
    public void A_clock_that_went_back_is_told_and_the_last_answer_counts()
    {
        using var desk = new Desk();
        File.WriteAllText(desk.PathOf("juniper.log.jsonl"),
            "{\"at\":\"2031-01-01T00:00:00Z\",\"path\":\"drain.weeps\",\"read\":\"open\",\"replaces\":\"x\"}\n");
        var ran = desk.Run("look", "juniper", "drain.weeps", "blocked");
        ran.Results.Should().StartWith("The clock says 2026-11-25T16:05:00.").And.Contain("208 Correction");
        var walk = desk.Run("walk", "juniper");
        walk.Messages.Should().StartWith("juniper.log.jsonl:2:1");
        walk.Results.Should().Contain(" 208     Drain: weep holes blocked");
    }

    [Fact]
    public void Where_the_program_fails_after_an_answer_was_kept_it_says_so()
    {
        using var desk = new Desk();
        using var torn = new Torn();
        using var messages = new StringWriter();
        var run = () => CommandLine.Run(["look", "juniper", "208", "open"], new Terminal(torn, messages, desk.Folder, desk.Clock));
        run.Should().Throw<InvalidOperationException>();
        messages.ToString().Should().Contain("Kept, but what it changes can't be told:  drain.weeps: open");
        Log(desk).Should().ContainSingle();
    }

    [Fact]
    public void Two_that_write_at_once_lose_nothing_and_each_hears_the_other()
    {
        using var desk = new Desk();
        var heard = 0;
        Parallel.For(0, 2, writer =>
        {
            var log = new LogFile(desk.PathOf("juniper.log.jsonl"), "juniper.log.jsonl");
            for (var i = 0; i < 25; i++)
            {
                var line = new LoggedAnswer(Model.At.Nowhere, $"2026-11-25T16:{writer:00}:{i:00}Z", "liner.left", $"{i}").ToJson();
                var (text, isNews) = log.Keep("liner.left", _ => line);
                text.Should().EndWith(line + "\n");
                Interlocked.Add(ref heard, isNews ? 1 : 0);
            }
        });
        var lines = Log(desk);
        lines.Should().HaveCount(50).And.OnlyHaveUniqueItems();
        LogReader.Read("juniper.log.jsonl", string.Join('\n', lines)).Answers.Should().HaveCount(50);
        heard.Should().BePositive();
    }

    /// <summary>Runs <c>look</c>; between the answers something else happens.</summary>
    private static string Looks(Desk desk, params object[] script)
    {
        using var typed = new Script(script);
        using var results = new StringWriter();
        CommandLine.Run(["look", "juniper"], new Terminal(results, results, desk.Folder, desk.Clock) { In = typed });
        return results.ToString().ReplaceLineEndings(" ");
    }

    private static string[] Log(Desk desk) => File.ReadAllLines(desk.PathOf("juniper.log.jsonl"));

    private sealed class Script(object[] script) : TextReader
    {
        private int _next;

        public override string? ReadLine()
        {
            while (_next < script.Length)
            {
                switch (script[_next++])
                {
                    case string answer:
                        return answer;
                    case Delegate happens:
                        happens.DynamicInvoke();
                        break;
                }
            }

            return null;
        }
    }

    private sealed class Torn : StringWriter
    {
        public override void WriteLine(string? value) => throw new InvalidOperationException("The paper is out.");
    }
}
