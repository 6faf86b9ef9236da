using WetCheck.Flow;
using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Reporting;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Cli;

/// <summary>Answers by <c>look</c>: asked in order, kept in the log, never in the job file.</summary>
public sealed class LookTests
{
    [Fact]
    public void Answers_given_one_a_line_leave_less_to_look_at_and_the_job_file_as_it_was()
    {
        using var desk = Five();
        var before = File.ReadAllText(desk.PathOf("five.job.yaml"));
        var owed = Looks(desk);
        desk.Typed = "folded\n\nfolded\nfolded\nbehind each\nflat on the wall\n";
        var ran = desk.Run("look", "five");
        ran.Messages.Should().BeEmpty();
        ran.Results.Split('\n').Count(line => line.StartsWith("Kept.", StringComparison.Ordinal)).Should().Be(5);
        Log(desk).Should().HaveCount(5);
        Looks(desk).Should().BeLessThan(owed);
        File.ReadAllText(desk.PathOf("five.job.yaml")).Should().Be(before);
    }

    [Fact]
    public void After_each_answer_the_kept_walk_is_a_fresh_walk_of_file_and_log()
    {
        var vocabulary = TheBook.Book.Vocabulary;
        var fresh = TheBook.Example("five-answers");
        var kept = new KeptWalk(fresh, TheBook.Ready);
        string[] said =
            ["liner.left: 3", "liner.right: 2", "liner.corners: all folded", "nails.left: 3 above",
            "nails.left: 1 below", "nails.seen: all", "plumbing code: IRC 2021", "curb.cap adds: plan 1",
            "ledges.niche: none", "liner.right: 3"];
        var log = said.Select((line, i) => new LoggedAnswer(
            new At("five-answers.log.jsonl", i + 1, 1), $"2026-11-25T16:0{i}:00Z", line.Split(": ")[0],
                line.Split(": ")[1], Replaces: i == said.Length - 1 ? "2026-11-25T16:01:00Z" : null)).ToList();
        for (var i = 0; i < log.Count; i++)
        {
            kept.Change(JobLog.Add(kept.Job, vocabulary, log[i]).Job!);
            var (job, problems) = JobLog.Apply(fresh, vocabulary, [.. log.Take(i + 1)]);
            problems.Should().BeEmpty();
            JsonList.Of(kept.Walk([]), "en", "").Should().Be(JsonList.Of(TheBook.Walk(job), "en", ""), said[i]);
        }
    }

    [Fact]
    public void A_new_reading_closes_a_Correction_on_paper()
    {
        using var desk = new Desk();
        var ran = desk.Run("look", "juniper", "214-D", "3");
        ran.Results.Should().StartWith("Kept. 214-D Later, good on paper.").And.Contain(" left.\n")
            .And.EndWith("Keep curb, cap adds: 1\" or less.\n");
        Log(desk).Single().Should().Contain("\"path\":\"liner.right\",\"read\":\"3\",\"replaces\":\"juniper.job.yaml:36:10\"");
        desk.Run("walk", "juniper").Results.Should().NotContain(" 214-D  Right wall: liner too low");
        desk.Run("why", "juniper", "214-D").Results.Should().Contain("3\" above the rough curb").And.Contain("juniper.log.jsonl");
        desk.Run("look", "juniper", "214-D", "2-3/8").Results.Should().Contain("214-D Correction, on paper");
    }

    [Fact]
    public void A_line_of_several_is_written_anew()
    {
        using var desk = new Desk();
        desk.Run("look", "juniper", "221-A", "none").Results.Should().Contain("221-A, 222-A Not on this job");
        desk.Run("walk", "juniper").Results.Should().NotContain(" 221-A ");
    }

    [Fact]
    public void An_answer_that_cant_be_read_is_told_and_asked_once_more()
    {
        using var desk = new Desk { Typed = "tall\n3\n", IsHand = true };
        var ran = desk.Run("look", "juniper", "214-D");
        ran.Messages.Should().Contain("tall").And.Contain("^");
        ran.Results.Split('\n').Count(line => line.Contains("How high", StringComparison.Ordinal)).Should().Be(2);
        Log(desk).Should().ContainSingle();
    }

    [Fact]
    public void With_nothing_typed_it_asks_once_and_keeps_nothing()
    {
        using var desk = new Desk();
        desk.Run("look", "juniper").Results.Should().Contain("610").And.NotContain("Kept.");
        File.Exists(desk.PathOf("juniper.log.jsonl")).Should().BeFalse();
    }

    [Fact]
    public void One_answer_for_several_questions_is_asked_which()
    {
        using var desk =
            new Desk(("elm.job.yaml",
            "job: Elm\nmethod: liner under mortar\nunits: inches\nstage: flood test\nplumbing code: IRC 2021\n"));
        var ran = desk.Run("look", "elm", "214-D", "3");
        ran.Code.Should().Be(2);
        ran.Messages.Should().Contain("wetcheck look elm liner.right ANSWER").And.Contain("curb.");
    }

    [Fact]
    public void A_log_that_cant_be_written_gives_the_answer_back()
    {
        using var desk = new Desk();
        Directory.CreateDirectory(desk.PathOf("juniper.log.jsonl"));
        var ran = desk.Run("look", "juniper", "214-D", "3");
        ran.Code.Should().Be(5);
        ran.Results.Should().BeEmpty();
        ran.Messages.Should().Contain("juniper.log.jsonl can't be written.").And.Contain("Not kept:  liner.right: 3");
    }

    [Fact]
    public void A_log_that_another_program_holds_gives_the_answer_back()
    {
        using var desk = new Desk();
        desk.Write("juniper.log.jsonl", "");
        using var other = new Holding(desk.PathOf("juniper.log.jsonl"));
        var ran = desk.Run("look", "juniper", "214-D", "3");
        ran.Results.Should().BeEmpty();
        ran.Code.Should().BeOneOf(4, 5);
    }

    [Fact]
    public void A_torn_log_is_told_and_the_next_answer_has_a_line_of_its_own()
    {
        using var desk = new Desk();
        desk.Run("look", "juniper", "214-D", "3");
        File.AppendAllText(desk.PathOf("juniper.log.jsonl"), "{\"at\":\"2026-11-2");
        var walk = desk.Run("walk", "juniper");
        walk.Code.Should().Be(4);
        walk.Messages.Should().StartWith("juniper.log.jsonl:2:1");
        desk.Run("look", "juniper", "208", "open").Results.Should().StartWith("Kept. 208 OK");
        LogReader.Read("juniper.log.jsonl", File.ReadAllText(desk.PathOf("juniper.log.jsonl"))).Answers.Should().HaveCount(2);
    }

    private static Desk Five() => new(("five.job.yaml", Repository.Read("docs/examples/five-answers.job.yaml")));

    private static string[] Log(Desk desk) => [.. Directory.GetFiles(desk.Folder, "*.log.jsonl").SelectMany(File.ReadAllLines)];

    private static int Looks(Desk desk) =>
        System.Text.Json.JsonDocument.Parse(desk.Run("walk", "five", "--format", "json").Results)
            .RootElement.GetProperty("looks").GetArrayLength();

    private sealed class Holding(string path) : IDisposable
    {
        private readonly FileStream _file = new(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None);

        public void Dispose() => _file.Dispose();
    }
}
