using System.Text.Json;
using Json.Schema;
using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Intake;

/// <summary>The log beside a job: what it may hold, and what its answers do to the job.</summary>
public sealed class Logs
{
    private const string Head = "job: example\nmethod: liner under mortar\nunits: inches\nstage: flood test\n";

    [Fact]
    public void What_is_written_is_read_back_and_keeps_to_the_schema()
    {
        var schema = JsonSchema.FromText(Repository.Read("docs/schemas/log.schema.json"));
        foreach (var answer in new[] { Said("liner.left", "3-1/8\" above"),
            Said("glass", "none") with { By = "JM", Tool = "laser", Replaces = "juniper.job.yaml:9:3" } })
        {
            using var json = JsonDocument.Parse(answer.ToJson());
            schema.Evaluate(json.RootElement).IsValid.Should().BeTrue(answer.ToJson());
            var (read, problems) = LogReader.Read("test.log.jsonl", answer.ToJson() + "\n");
            problems.Should().BeEmpty();
            (read.Single() with { At = answer.At, Line = "" }).Should().Be(answer);
        }

        using var odd = JsonDocument.Parse("""{"at":"2026-11-25T16:05:00Z","path":"glass","read":"none","surprise":"1"}""");
        schema.Evaluate(odd.RootElement).IsValid.Should().BeFalse();
    }

    [Fact]
    public void A_torn_last_line_is_told_and_those_before_it_count()
    {
        var (answers, problems) =
            LogReader.Read("test.log.jsonl",
            Said("liner.left", "3").ToJson() + "\n" + Said("liner.back", "3").ToJson()[..40]);
        answers.Should().ContainSingle().Which.Path.Should().Be("liner.left");
        problems.Should().ContainSingle().Which.At.Line.Should().Be(2);
    }

    [Fact]
    public void Any_cut_of_a_log_keeps_every_whole_line()
    {
        var log = string.Concat(Enumerable.Range(1, 5).Select(i => Said("liner.left", $"{i}-1/2 ½").ToJson() + "\n"));
        for (var cut = 0; cut <= log.Length; cut++)
        {
            var whole = log[..cut].Count(c => c == '\n');
            LogReader.Read("test.log.jsonl", log[..cut]).Answers.Count.Should().BeInRange(whole, whole + 1);
        }
    }

    [Theory]
    [InlineData("liner.back", "3", "liner:\n  back: 3")]
    [InlineData("liner.corners", "left-back cut", "liner:\n  corners: left-back cut")]
    [InlineData("plumbing code", "UPC 2021", "plumbing code: UPC 2021")]
    [InlineData("nails.seen", "all", "nails:\n  seen: all")]
    [InlineData("ledges.niche", "none", "ledges:\n  niche: none")]
    [InlineData("glass", "yes", "glass: yes")]
    [InlineData("seams", "none", "seams: none")]
    public void An_answer_to_a_blank_line_is_as_if_written_there(string path, string read, string line)
    {
        var (job, problems) = JobLog.Add(BookText.Job(Head), BookText.Vocabulary, Said(path, read));
        problems.Should().BeEmpty();
        JobPage.Of(job!).Replace(" on 2026-11-25T16:05:00Z", "", StringComparison.Ordinal).Should()
            .Be(JobPage.Of(BookText.Job(Head + line + "\n")));
    }

    [Fact]
    public void A_second_answer_stands_beside_the_first_and_one_that_replaces_stands_alone()
    {
        var job = BookText.Job(Head + "liner:\n  right: 2-1/2\n  left: 4\n");
        Readings(job, Said("liner.right", "3")).Should().Equal("2-1/2", "3");
        Readings(job, Said("liner.right", "3") with { Replaces = "test.job.yaml:6:10" }).Should().Equal("3");
        Readings(job, Said("liner.right", "3"), Said("liner.right", "3-1/4") with { Replaces = "2026-11-25T16:05:00Z" })
            .Should().Equal("3-1/4");
    }

    [Fact]
    public void Answers_count_in_the_order_of_their_lines_though_the_clock_jumped_back()
    {
        var job = BookText.Job(Head + "liner:\n  right: 2-1/2\n");
        Readings(job, Said("liner.right", "3"), Said("liner.right", "4"),
            Said("liner.right", "5") with { Time = "2026-11-25T09:00:00Z" }).Should().Equal("2-1/2", "3", "4", "5");
        Readings(job, Said("liner.right", "3"),
            Said("liner.right", "4") with { Time = "2026-11-25T09:00:00Z", Replaces = "2026-11-25T16:05:00Z" }).Should()
            .Equal("4");
    }

    [Fact]
    public void Members_of_a_list_are_counted_on_and_replaced_by_their_line()
    {
        var job = BookText.Job(Head + "nails:\n  left: 3 above, 4 above\n");
        Members(job, Said("nails.left", "5 above")).Should().Equal("fastener/left/1", "fastener/left/2", "fastener/left/3");
        Members(job, Said("nails.left", "5 above") with { Replaces = "x" }).Should().Equal("fastener/left/1");
        Members(job, Said("nails.left", "none") with { Replaces = "x" }).Should().BeEmpty();
    }

    [Theory]
    [InlineData("liner.bakc", "3", "unknown-question")]
    [InlineData("liner.back", "tall", "no-number")]
    public void What_cant_be_read_leaves_the_job_as_it_was_and_is_told(string path, string read, string code)
    {
        var job = BookText.Job(Head);
        var (same, problems) = JobLog.Apply(job, BookText.Vocabulary, [Said(path, read) with { At = new At("test.log.jsonl", 7, 60) }]);
        same.Should().BeSameAs(job);
        problems.Should().ContainSingle().Which.Should()
            .Match<Problem>(problem => problem.Code == code && problem.At.Line == 7
            && problem.At.File == "test.log.jsonl");
    }

    private static LoggedAnswer Said(string path, string read) => new(new At("test.log.jsonl", 1, 1), "2026-11-25T16:05:00Z", path, read);

    [Fact]
    public void A_clock_that_was_never_set_does_not_put_an_answer_before_the_job_file()
    {
        var job = BookText.Job(Head + "readings by: MR, tape, 2026-11-20\nliner:\n  right: 2-1/2\n");
        Readings(job, Said("liner.right", "3") with { Time = "1970-01-01T00:00:09Z" }).Should().Equal("2-1/2", "3");
    }

    [Theory]
    [InlineData("{\"at\":\"2026-11-25T16:06:00Z\",\"path\":\"liner.back\",\"read\":\"3 \uFFFD", 2, "log-torn")]
    [InlineData("rubbish\n", 2, "log-line")]
    [InlineData("\0\0\0\0", 2, "log-torn")]
    public void A_line_that_is_no_answer_is_told_with_its_place_and_the_others_count(string odd, int line, string code)
    {
        foreach (var after in code == "log-line" ? new[] { Said("liner.left", "4").ToJson() + "\r\n" } : [""])
        {
            var (answers, problems) = LogReader.Read("test.log.jsonl", "\uFEFF" + Said("liner.left", "3").ToJson() + "\r\n" + odd + after);
            answers.Count.Should().Be(after.Length > 0 ? 2 : 1);
            problems.Should().ContainSingle().Which.Should().Match<Problem>(problem => problem.At.Line == line && problem.Code == code);
        }
    }

    [Fact]
    public void A_line_that_stands_twice_counts_once()
    {
        var line = Said("liner.left", "3").ToJson() + "\n";
        var (answers, problems) = LogReader.Read("test.log.jsonl", line + line);
        answers.Should().ContainSingle();
        problems.Should().ContainSingle().Which.Effect.Should().Be(Effect.Asked);
    }

    [Fact]
    public void One_member_of_a_list_is_answered_by_its_number()
    {
        var job = BookText.Job(Head + "nails:\n  left: 3 above, ?, 5 above\n");
        Heights(job, Said("nails.left 2", "4 above")).Should().Equal("3 above", "4 above", "5 above");
        Heights(job, Said("nails.left 3", "6 above") with { Replaces = "x" }).Should().Equal("3 above", "6 above");
        Heights(job, Said("nails.left 1", "none"), Said("nails.left", "7 above")).Should().Equal("5 above", "7 above");
        Members(job, Said("nails.left 1", "none"), Said("nails.left", "7 above")).Should()
            .Equal("fastener/left/2", "fastener/left/3", "fastener/left/4");
    }

    [Fact]
    public void Of_two_stops_the_later_counts()
    {
        With(BookText.Job(Head), [Said("stage", "before bed")]).Stage.Should().Be("before bed");
        With(BookText.Job(Head.Replace("flood test", "before tile", StringComparison.Ordinal)),
            [Said("stage", "before bed")]).Stage.Should().Be("before tile");
        With(BookText.Job(Head), [Said("stage", "before bed"), Said("stage", "flood test")]).Stage.Should().Be("flood test");
    }

    private static Job With(Job job, LoggedAnswer[] log) =>
        JobLog.Apply(job, BookText.Vocabulary,
            LogReader.Read("test.log.jsonl", string.Concat(log.Select(answer => answer.ToJson() + "\n"))).Answers).Job;

    private static IEnumerable<string> Heights(Job job, params LoggedAnswer[] log) =>
        With(job, log).Parts.Where(part => part.Part.Kind.Name == "fastener" && part.Part.Index is not null)
            .SelectMany(part => part.Of("height")).Select(reading => reading.Typed);

    private static IEnumerable<string> Readings(Job job, params LoggedAnswer[] log) =>
        With(job, log).Parts.Single(part => part.Part.Id == "liner side/right").Of("top").Select(reading => reading.Typed);

    private static IEnumerable<string> Members(Job job, params LoggedAnswer[] log) =>
        With(job, log).Parts.Where(part => part.Part.Kind.Name == "fastener" && part.Part.Index is not null).Select(part => part.Part.Id);
}
