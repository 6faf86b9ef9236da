using WetCheck.Intake;

namespace WetCheck.Tests.Intake;

/// <summary>The lines at the top of a job file.</summary>
public sealed class Headers
{
    [Fact]
    public void What_they_say()
    {
        var job = BookText.Job("""
            job: Larkspur, guest bath
            stage: before bed
            method: liner under mortar
            units: mm
            plumbing code: IRC 2021
            building code: ibc
            electrical code: NEC 2020
            access standard: A117.1 2017
            readings by: MR, tape, 2026-11-25
            notes: |
              Ring before five. # 4
              The dog is friendly.
            """);
        (job.Name, job.Stage, job.Method!.Name, job.Metric, job.ReadingsBy).Should()
            .Be(("Larkspur, guest bath", "before bed", "liner under mortar", true, "MR, tape, 2026-11-25"));
        job.Codes.Select(code => $"{code.Key} {code.Value.Family} {code.Value.Edition} {code.Value.InBook}")
            .Should().BeEquivalentTo("plumbing IRC 2021 True", "building IBC  True", "electrical NEC 2020 True", "access A117.1 2017 True");
        job.Notes.Should().Be("Ring before five. # 4\nThe dog is friendly.");
    }

    [Theory]
    [InlineData("access code: none", "access", "none", null)]
    [InlineData("building code: E3/AS1", "building", "E3/AS1", null)]
    [InlineData("electrical code: AS 3000 2018", "electrical", "AS 3000", 2018)]
    [InlineData("plumbing code: irc-2018", "plumbing", "IRC", 2018)]
    public void A_code(string line, string discipline, string family, int? edition)
    {
        var code = BookText.Job(line).Codes[discipline];
        (code.Family, code.Edition, code.InBook).Should().Be((family, edition, true));
    }

    [Fact]
    public void A_code_the_book_does_not_have_keeps_its_name()
    {
        var code = BookText.Job("plumbing code: County of Example 2024").Codes["plumbing"];
        (code.Family, code.Edition, code.InBook, code.Typed).Should().Be(("County of Example", 2024, false, "County of Example 2024"));
    }

    [Fact]
    public void A_job_without_a_name_goes_by_its_file() =>
        JobReader.Read("docs/examples/larkspur.job.yaml", "units: inches", BookText.Vocabulary).Job!.Name.Should().Be("larkspur");

    [Fact]
    public void A_stop_is_held_against_the_method_wherever_it_stands() =>
        BookText.ProblemsOf("stage: before membrane\nmethod: liner under mortar").Should()
            .ContainSingle(problem => problem.Code == "unknown-stage");

    [Fact]
    public void An_answer_that_loses_its_end_to_a_comment_counts_as_blank()
    {
        var (job, problems) =
            JobReader.Read("test.job.yaml",
            "job: Unit #4\nunits: inches\ncurb:\n  width: 4 #1/2\n  height: 5 # rough\n", BookText.Vocabulary);
        problems.Select(problem => problem.At.Line).Should().Equal(1, 4);
        job!.Parts.Single(part => part.Part.Id == "curb").Readings.Keys.Should().Equal("height");
        BookText.Job("job: Unit#4").Name.Should().Be("Unit#4");
    }
}
