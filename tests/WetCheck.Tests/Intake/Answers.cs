using WetCheck.Model;

namespace WetCheck.Tests.Intake;

/// <summary>What one answer is taken for. Numbers by themselves: see the tests of tape notation.</summary>
public sealed class Answers
{
    [Theory]
    [InlineData("3-1/4", "13/4 in in")]
    [InlineData("3-1/4 above", "13/4 in in")]
    [InlineData("2 below", "-2 in in")]
    [InlineData("3 above rough curb", "3 in in")]
    [InlineData("3 above the rough curb", "3 in in")]
    [InlineData("3 above curb", "3 in in")]
    [InlineData("1/4 above bed", "1/4 in in above top of bed")]
    [InlineData("3/4 into bed", "-3/4 in in above top of bed")]
    [InlineData("in bed", "from  to under 0 in in above top of bed exactly")]
    [InlineData("into the bed", "from  to under 0 in in above top of bed exactly")]
    [InlineData("2 above room floor", "2 in in above room floor")]
    [InlineData("2 above the finished curb", "2 in in above finished threshold")]
    [InlineData("over 3", "over 3 to  in in exactly")]
    [InlineData("under 3 above bed", "from  to under 3 in in above top of bed exactly")]
    [InlineData("over 2 below", "from  to under -2 in in exactly")]
    [InlineData("76 mm above room floor", "380/127 in mm above room floor")]
    [InlineData("3\" above", "3 in in")]
    [InlineData("1'-0 1/2\" above", "25/2 in ft")]
    [InlineData("plan 3", "plan 3 in in")]
    [InlineData("Plan 3 ABOVE Bed", "plan 3 in in above top of bed")]
    [InlineData("hidden", "hidden")]
    public void A_height(string typed, string read) => Of("liner", "left", typed, "liner side/left").Should().Be(read);

    [Theory]
    [InlineData("3/4 over 36", "3/4 over 36 ")]
    [InlineData("1:48", "1 over 48 by ratio")]
    [InlineData("2 %", "2 over 100 by ratio")]
    [InlineData("1/4 per ft", "1/4 over 12 ")]
    [InlineData("over 1/4 per ft", "over 1/48 to  in per ft exactly")]
    [InlineData("plan 1 in 48", "plan 1 over 48 by ratio")]
    public void A_fall(string typed, string read) => Of("liner falls", "left", typed, "liner facet/left").Should().Be(read);

    [Theory]
    [InlineData("60 x 36", "60 x 36 NotSaid ")]
    [InlineData("5' x 3' to studs", "60 x 36 ToStuds ")]
    [InlineData("60 x 36 overall", "60 x 36 Overall ")]
    [InlineData("plan 32 x 32 finished, floor 880 sq in", "plan 32 x 32 Finished 880")]
    public void A_size(string typed, string read) => Of("shower", "size", typed, "shower").Should().Be(read);

    [Fact]
    public void A_point() => Of("shower", "drain at", "30, 18-1/2", "shower").Should().Be("30, 37/2");

    [Theory]
    [InlineData("open", "open")]
    [InlineData("BLOCKED", "blocked")]
    [InlineData("plan open", "plan open")]
    public void A_choice(string typed, string read) => Of("drain", "weeps", typed, "drain").Should().Be(read);

    [Fact]
    public void A_choice_that_starts_like_a_bound_is_a_choice() =>
        Of("building", "mould", "over 10 sq ft", "job").Should().Be("over 10 sq ft");

    [Fact]
    public void Several_readings_of_one_fact_stand_by_date_then_by_line()
    {
        var job = BookText.Job("""
            units: inches
            readings by: MR, tape
            liner:
              right:
                - { read: 2-1/2, date: 2026-11-27 }
                - 3
                - { read: 2-3/4, tool: laser, by: JM, date: 2026-11-26T08:00-05:00, photo: x.jpg }
                - { read: plan 3-1/2, date: 2026-11-26 }
            """);
        Part(job, "liner side/right").Of("top").Select(JobPage.Reading).Should().Equal(
            "3 in in by MR with tape",
            "plan 7/2 in in by MR with tape on 2026-11-26",
            "11/4 in in by JM with laser on 2026-11-26T08:00-05:00",
            "5/2 in in by MR with tape on 2026-11-27");
        Part(job, "liner side/right").Of("top").Select(reading => reading.Photo).Should().Equal(null, null, "x.jpg", null);
    }

    [Fact]
    public void A_tool_said_for_all_counts_only_where_it_can_measure()
    {
        var job = BookText.Job("units: inches\nreadings by: MR, laser, 2026-11-25\ncurb:\n  width: plan 4\nvalve:\n  "
            + "limit: plan 118 F\ndrain:\n  weeps: open");
        Part(job, "curb").Of("width").Single().Tool!.Name.Should().Be("laser");
        Part(job, "valve").Of("limit").Single().Tool.Should().BeNull();
        Part(job, "drain").Of("weeps").Single().Should()
            .Match<Reading>(reading => reading.Tool == null && reading.By == "MR" && reading.Date == "2026-11-25");
    }

    [Fact]
    public void A_reading_keeps_what_was_typed_and_where()
    {
        var nail = Part(BookText.Job("units: inches\nnails:\n  left: 3-1/2 above, plan 4 above"), "fastener/left/2").Of("height").Single();
        nail.Typed.Should().Be("4 above");
        nail.At.Should().Be(new At("test.job.yaml", 3, 27));
        Part(BookText.Job("units: inches\ncurb: { height: \"4-1/2\" }"), "curb").Of("height").Single().At.Column.Should().Be(18);
    }

    [Fact]
    public void Numbers_without_a_unit_take_the_jobs_own()
    {
        Of("curb", "width", "100", "curb", "millimetres").Should().Be("500/127 in mm");
        Of("curb", "width", "4 in", "curb", "millimetres").Should().Be("4 in in");
        Of("building", "built", "1965", "job", "").Should().Be("1965 in ");
    }

    private static string Of(string section, string line, string typed, string part, string units = "inches")
    {
        var job = BookText.Job($"units: {units}\n{section}:\n  {line}: {typed}\n");
        return JobPage.Reading(Part(job, part).Readings.Values.Single().Single());
    }

    private static JobPart Part(Job job, string id) => job.Parts.Single(part => part.Part.Id == id);
}
