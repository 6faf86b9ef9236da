using WetCheck.Model;

namespace WetCheck.Tests.Intake;

/// <summary>Which parts a job has, and what the file says of each being there.</summary>
public sealed class PartsAndLists
{
    [Fact]
    public void A_blank_job_has_every_part_and_knows_of_none()
    {
        var job = BookText.Job("job: nothing yet");
        job.Parts.Where(part => part.Part.Kind.Name != "job").Should()
            .OnlyContain(part => part.Said == Tri.Unknown && part.Readings.Count == 0);
        job.Lists.Should().OnlyContain(list => list.Whole == Tri.Unknown);
        Ids(job).Should().Contain(["job", "curb", "liner side/left", "liner corner/left-back", "fastener/other", "wall layer/other"]);
        job.Parts.Select(part => part.Part.Kind).Distinct().Should().Equal(BookText.Vocabulary.Kinds);
        job.Where["curb.height"].Should().Be(new At("test.job.yaml", 1, 1));
    }

    [Fact]
    public void Every_part_hangs_below_another_up_to_the_job()
    {
        foreach (var part in BookText.Job("nails:\n  left: ?").Parts)
        {
            part.Part.Nearest("job").Should().NotBeNull(part.Part.Id);
        }
    }

    [Fact]
    public void A_part_is_there_if_anything_below_it_is()
    {
        var job = BookText.Job("nails:\n  left: ?");
        Said(job, "fastener/left/1").Should().Be(Tri.Yes);
        Said(job, "liner").Should().Be(Tri.Yes);
        Said(job, "shower").Should().Be(Tri.Yes);
        Said(job, "curb").Should().Be(Tri.Unknown);
    }

    [Theory]
    [InlineData("curb: none", "curb", Tri.No)]
    [InlineData("curb: ?", "curb", Tri.Yes)]
    [InlineData("liner: no", "liner", Tri.No)]
    [InlineData("liner: yes", "liner", Tri.Yes)]
    [InlineData("liner:\n  seat: none", "liner seat", Tri.No)]
    [InlineData("ledges: { niche: none }", "ledge/niche", Tri.No)]
    [InlineData("ledges: none", "ledge/bench", Tri.No)]
    [InlineData("ledges:\n  bench: 1/4 over 12", "ledge/bench", Tri.Yes)]
    [InlineData("curb:\n  width: hidden", "curb", Tri.Yes)]
    public void What_is_said(string line, string part, Tri said) => Said(BookText.Job($"units: inches\n{line}"), part).Should().Be(said);

    [Fact]
    public void Members_are_counted_in_file_order_within_their_place()
    {
        var job = BookText.Job("units: inches\nnails:\n  seen: some\n  right: 3 above, ?\n  curb inside: [2 below, 1 "
            + "below]\nseams: curb outside lap 2 open, floor welded lap 3, floor open");
        Ids(job, "fastener").Should()
            .Equal("fastener/right/1", "fastener/right/2", "fastener/curb inside/1", "fastener/curb inside/2",
            "fastener/other");
        Ids(job, "seam").Should().Equal("seam/floor/1", "seam/floor/2", "seam/curb outside/1", "seam/other");
        Readings(job, "seam/floor/1").Should().Be("joined welded, lap 3 in in");
        Readings(job, "seam/curb outside/1").Should().Be("joined open, lap 2 in in");
    }

    [Theory]
    [InlineData("nails:\n  seen: all\n  left: ?", "fastener", Tri.Yes, 1)]
    [InlineData("nails:\n  seen: some\n  left: ?", "fastener", Tri.Unknown, 2)]
    [InlineData("nails:\n  left: none", "fastener", Tri.Unknown, 1)]
    [InlineData("nails: none", "fastener", Tri.Yes, 0)]
    [InlineData("walls:\n  layers: none", "wall layer", Tri.Yes, 0)]
    [InlineData("walls:\n  layers: film, tile", "wall layer", Tri.Yes, 2)]
    [InlineData("lifted tiles: 96, 97, 95", "lifted tile", Tri.Yes, 3)]
    [InlineData("walls: ?", "wall layer", Tri.Unknown, 1)]
    public void Whether_a_list_is_whole(string lines, string kind, Tri whole, int parts)
    {
        var job = BookText.Job($"units: inches\n{lines}");
        job.Lists.Single(list => list.Kind.Name == kind).Whole.Should().Be(whole);
        Ids(job, kind).Should().HaveCount(parts);
    }

    [Theory]
    [InlineData("nails:\n  seen: all\n  left: 3 abve, 4 above", "fastener", "fastener/left/2, fastener/other")]
    [InlineData("walls:\n  layers: film, boarding, tile", "wall layer", "wall layer/1, wall layer/3, wall layer/other")]
    public void A_list_with_a_member_that_cant_be_read_is_not_whole(string lines, string kind, string parts)
    {
        var (job, problems) = WetCheck.Intake.JobReader.Read("test.job.yaml", $"units: inches\n{lines}", BookText.Vocabulary);
        problems.Should().ContainSingle(problem => problem.Effect == Effect.Blank);
        string.Join(", ", Ids(job!, kind)).Should().Be(parts);
    }

    [Theory]
    [InlineData("all folded", "folded folded folded folded")]
    [InlineData("folded", "folded folded folded folded")]
    [InlineData("left-back cut, rest folded", "cut folded folded folded")]
    [InlineData("left-back cut, right jamb plan pieced", "cut   plan pieced")]
    [InlineData("right-back ?, left jamb none", "   ")]
    public void Items_by_place(string typed, string made)
    {
        var job = BookText.Job($"liner:\n  corners: {typed}");
        string.Join(' ',
            job.Parts.Where(part => part.Part.Kind.Name == "liner corner")
            .Select(part => string.Concat(part.Of("made").Select(JobPage.Reading)))).Should().Be(made);
    }

    [Fact]
    public void What_is_read_below_a_part_that_is_said_to_be_missing_counts_and_is_asked()
    {
        var (job, problems) =
            WetCheck.Intake.JobReader.Read("test.job.yaml", "units: inches\nliner: none\nnails:\n  left: 3 above",
            BookText.Vocabulary);
        problems.Should().ContainSingle(problem => problem.Code == "none-with-readings" && problem.At.Line == 2);
        Said(job!, "liner").Should().Be(Tri.Yes);
    }

    private static Tri Said(Job job, string id) => job.Parts.Single(part => part.Part.Id == id).Said;

    private static IEnumerable<string> Ids(Job job, string? kind = null) =>
        job.Parts.Where(part => kind is null || part.Part.Kind.Name == kind).Select(part => part.Part.Id);

    private static string Readings(Job job, string id) =>
        string.Join(", ",
            job.Parts.Single(part => part.Part.Id == id).Readings.OrderBy(pair => pair.Key, StringComparer.Ordinal)
            .Select(pair => $"{pair.Key} {JobPage.Reading(pair.Value.Single())}"));
}
