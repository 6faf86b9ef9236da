using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Intake;

/// <summary>A job with one line written otherwise is the job of the file with that line written so.</summary>
public sealed class Changes
{
    private const string Text = """
        job: example
        method: liner under mortar
        units: inches
        stage: flood test
        plumbing code: IRC 2021
        curb:
          height: 4-1/2
          cap adds: plan 1
        liner:
          left: 3-1/8
          right: 2-1/2
          corners: left-back cut, rest folded
        nails:
          seen: all
          left: 3-1/2 above, 4 above
          curb inside: 2 below
        seams: none
        walls:
          layers: plan film, plan tile
        ledges: { niche: none }
        notes: nothing
        """;

    [Theory]
    [InlineData("curb.height: 5", "height: 4-1/2", "height: 5")]
    [InlineData("curb.height:", "height: 4-1/2", "height:")]
    [InlineData("curb.cap adds: 1-1/4", "cap adds: plan 1", "cap adds: 1-1/4")]
    [InlineData("liner.right: hidden", "right: 2-1/2", "right: hidden")]
    [InlineData("LINER.D: 3", "right: 2-1/2", "right: 3")]
    [InlineData("liner.corners: all folded", "corners: left-back cut, rest folded", "corners: all folded")]
    [InlineData("nails.left: ?", "left: 3-1/2 above, 4 above", "left: ?")]
    [InlineData("nails.left:", "left: 3-1/2 above, 4 above", "left:")]
    [InlineData("nails.seen: some", "seen: all", "seen: some")]
    [InlineData("seams: floor lap 2 welded", "seams: none", "seams: floor lap 2 welded")]
    [InlineData("walls.layers: none", "layers: plan film, plan tile", "layers: none")]
    [InlineData("ledges.niche: 1/8 over 6", "{ niche: none }", "{ niche: 1/8 over 6 }")]
    [InlineData("ledges: none", "{ niche: none }", "none")]
    [InlineData("method: curbless bonded", "method: liner under mortar", "method: curbless bonded")]
    [InlineData("method:", "method: liner under mortar", "method:")]
    [InlineData("stage: before bed", "stage: flood test", "stage: before bed")]
    [InlineData("plumbing code: UPC 2021", "plumbing code: IRC 2021", "plumbing code: UPC 2021")]
    [InlineData("plumbing code:", "plumbing code: IRC 2021", "plumbing code:")]
    [InlineData("building.built: 1965", "notes: nothing", "building: { built: 1965 }\nnotes: nothing")]
    [InlineData("curb: none", "curb:\n  height: 4-1/2\n  cap adds: plan 1", "curb: none")]
    public void Is_as_if_written_so(string line, string old, string young)
    {
        Text.Should().Contain(old);
        var (changed, problem) = JobChange.Apply(BookText.Job(Text), BookText.Vocabulary, line);
        problem.Should().BeNull(line);
        var written = JobReader.Read("test.job.yaml", Text.Replace(old, young, StringComparison.Ordinal), BookText.Vocabulary).Job!;
        JobPage.Of(changed!).Should().Be(JobPage.Of(written));
    }

    [Fact]
    public void A_line_put_back_gives_the_job_again()
    {
        var job = Juniper();
        foreach (var part in job.Parts.Where(part => part.Part.Kind.Many == Many.One))
        {
            foreach (var (name, readings) in part.Readings)
            {
                var path = $"{part.Part.Kind.Stands}.{name}";
                var away = JobChange.Apply(job, BookText.Vocabulary, $"{path}:").Job!;
                var back = JobChange.Apply(away, BookText.Vocabulary,
                    $"{path}: {(readings[^1].Planned ? "plan " : "")}{readings[^1].Typed}").Job!;
                back.Parts.Single(one => one.Part.Id == part.Part.Id).Of(name)
                    .Select(reading => JobPage.Value(reading.Value)).Should()
                    .Equal(readings.Select(reading => JobPage.Value(reading.Value)));
            }
        }
    }

    [Theory]
    [InlineData("curb.hieght: 5", "unknown-question", 1)]
    [InlineData("crub.height: 5", "unknown-section", 1)]
    [InlineData("curb.height: tall", "no-number", 14)]
    [InlineData("curb height", "change-form", 1)]
    [InlineData("stage: before membrane", "unknown-stage", 8)]
    public void What_cant_be_read_is_told_in_the_line_itself(string line, string code, int column)
    {
        var (job, problem) = JobChange.Apply(BookText.Job(Text), BookText.Vocabulary, line);
        job.Should().BeNull();
        (problem!.Code, problem.At.Column, problem.Typed).Should().Be((code, column, line));
    }

    [Fact]
    public void The_job_it_came_from_stays_as_it_was()
    {
        var job = BookText.Job(Text);
        var page = JobPage.Of(job);
        JobChange.Apply(job, BookText.Vocabulary, "curb.height: 9");
        JobPage.Of(job).Should().Be(page);
    }

    private static Job Juniper() =>
        JobReader.Read("juniper.job.yaml", Repository.Read("docs/examples/juniper.job.yaml"), BookText.Vocabulary).Job!;
}
