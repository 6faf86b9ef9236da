using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Tests.Intake;

/// <summary>Mistakes of the hand: all of a file in one run, in file order, and the rest is read.</summary>
public sealed class TypingMistakes
{
    [Fact]
    public void The_six_likeliest_in_one_file()
    {
        var page = ProblemPage.Of(BookText.ProblemsOf(string.Join('\n', [
            "units: inches",
            "shower:",
            "  size: 5-0 x 3-0",
            "liner falls:",
            "  left: 3/4 over 36",
            "\tback: 3/8 over 18",
            "drain:",
            "  pipe: 2",
            "  weaps: blocked",
            "liner:",
            "  left: 3-1/8",
            "  right:2-1/2",
            "   past jambs: 3",
            "board: plan",
            "  kind: plan cement",
            "  bottom: plan 1/4 above bed",
        ])));
        page.Split('\n')
            .Where(line => line.StartsWith("test", StringComparison.Ordinal)
            || line.Contains("^ ", StringComparison.Ordinal)).Select(line => line.Trim()).Should().Equal(
            "test.job.yaml:3:9  feet-or-inches (Blank)",
            "^ 5 feet 0, or something else? Write 5' x 3', or 60 x 36.",
            "test.job.yaml:6:1  tab (Stops)",
            "^ This line starts with a Tab. Use two spaces.",
            "test.job.yaml:9:3  unknown-question (Blank)",
            "^ The drain has no \"weaps\". Nearest: weeps. Also: pipe, body, form, grate, grate shape, channel "
            + "length, channel runs, ring, flange, joined, cut, guard ...",
            "test.job.yaml:12:9  no-space (Stops)",
            "^ Put a space after the colon:  right: 2-1/2",
            "test.job.yaml:13:4  odd-indent (Stops)",
            "^ 3 spaces here, 2 on the lines above. Line it up under \"right\".",
            "test.job.yaml:14:8  answer-above-questions (Stops)",
            "^ Lines 15 and 16 belong to \"board\". Write plan there.");
    }

    [Theory]
    [InlineData("liner:\n  left:\n   right: 3", "odd-indent", 3)]
    [InlineData("liner:\n  left: 3\n right: 3", "odd-indent", 3)]
    [InlineData("liner:\n    left: 3\n  right: 3", "odd-indent", 3)]
    [InlineData("liner:\n  left: 3\n\n# a note\n   right: 3", "odd-indent", 5)]
    [InlineData("liner:\n  right:3", "no-job", 0)]
    [InlineData("liner:\n  left: 3\n  right:3", "no-space", 3)]
    [InlineData("curb:\n  height: \"5\n  width: 4\"", "open-quote", 2)]
    [InlineData("curb:\n  height: '5\n  width: 4", "open-quote", 2)]
    [InlineData("curb:\n  height: 5\n\t\n  width: 4", "", 0)]
    [InlineData("curb:\n  height:\t5", "", 0)]
    [InlineData("curb:\r\n  height: 5\r\n  width: 4\r\n", "", 0)]
    [InlineData("curb:\n  height:\u00A05", "", 0)]
    [InlineData("curb:\n\u00A0 height: 5\u00A0in", "", 0)]
    [InlineData("curb:\n  height: ? # there", "", 0)]
    [InlineData("curb: ?\nliner: ?", "", 0)]
    [InlineData("nails:\n  left: ?, ?\n  right: [?, ?]", "", 0)]
    [InlineData("job: what is it?", "", 0)]
    public void One_of_them(string text, string code, int line)
    {
        var problems = BookText.ProblemsOf("units: inches\n" + text);
        if (code.Length == 0)
        {
            problems.Should().BeEmpty();
        }
        else if (line > 0)
        {
            problems.Should().ContainSingle().Which.Should().Match<Problem>(problem => problem.Code == code && problem.At.Line == line + 1);
        }
        else
        {
            problems.Should().NotBeEmpty();
        }
    }

    [Fact]
    public void What_cant_be_read_counts_as_blank_and_the_rest_is_read()
    {
        var (job, problems) =
            JobReader.Read("test.job.yaml",
            "units: inches\ncurb:\n  height: tall\n  width: 4\ndarin: 1\nliner:\n  left: 3 above rouf\n  right: 3",
            BookText.Vocabulary);
        problems.Should().HaveCount(3).And.OnlyContain(problem => problem.Effect == Effect.Blank);
        JobPage.Of(job!).Should().Be(JobPage.Of(BookText.Job("units: inches\ncurb:\n  width: 4\nliner:\n  right: 3")));
    }

    [Fact]
    public void A_mark_at_the_very_start_of_a_file_is_let_pass() =>
        BookText.Job("\uFEFFunits: inches\ncurb:\n  height: 5").Metric.Should().BeFalse();

    [Fact]
    public void A_broken_shape_stops_whatever_else_is_good() =>
        JobReader.Read("test.job.yaml", "units: inches\n\tcurb: none", BookText.Vocabulary).Job.Should().BeNull();
}
