using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Tests.Shows;

/// <summary>What a plan may and may not decide.</summary>
public sealed class PlansAndNails
{
    private const string Pan = "method: liner under mortar\nunits: inches\nstage: flood test\nplumbing code: IRC 2021\n";

    [Fact]
    public void A_low_nail_is_a_stop_while_the_finished_curb_is_only_a_plan()
    {
        // Water stands at least to the rough curb, whatever will be put on it.
        var entry = TheBook.Walk(Pan + "curb: { cap adds: plan 1 }\nnails: { seen: all, curb inside: 1 below }\n")
            .Entries.Single(one => one.Number == "221-A");
        entry.Result.Should().Be(Result.Correction);
        entry.Paper.Should().Be(Paper.None);
        entry.Severity.Should().Be(Severity.Stop);
    }

    [Fact]
    public void A_nail_on_the_curbs_outside_face_at_the_same_height_is_silent() =>
        TheBook.Walk(Pan + "curb: { cap adds: plan 1 }\nnails: { seen: all, curb outside: 1 below }\n").ToFix.Should().BeEmpty();

    [Fact]
    public void A_plan_that_falls_short_is_a_correction_on_paper_and_gone_when_a_good_reading_stands_there()
    {
        const string liner = Pan + "liner: { right: 2-1/2 }\n";
        var planned = TheBook.Job(liner + "curb: { cap adds: plan 1 }\n");
        var entry = TheBook.Walk(planned).Entries.Single(one => one.Number == "214-D");
        (entry.Result, entry.Paper).Should().Be((Result.Correction, Paper.Correction));
        entry.Worst.Hold.Should().ContainSingle().Which.Bound.Should().Be(new Rational(1, 2));

        var built = TheBook.Walk(TheBook.With(planned, "curb.cap adds: 1/2"));
        built.Entries.Single(one => one.Number == "214-D").Result.Should().Be(Result.Ok);
    }

    [Fact]
    public void Fourteen_low_nails_are_one_entry()
    {
        var nails = string.Join(", ", Enumerable.Range(1, 14).Select(i => $"{i}/16 below"));
        var entry = TheBook.Walk($"{Pan}nails: {{ seen: all, curb inside: "
            + $"\"{nails.Replace("8/16", "1/2", StringComparison.Ordinal)}\" }}\n").Entries.Single(one => one.Number == "221-A");
        entry.Same.Should().HaveCount(14);
        entry.Also.Select(also => also.Number).Should().Equal("222-A");
    }

    [Fact]
    public void What_the_method_always_has_is_looked_for_though_the_file_says_none()
    {
        var (job, problems) =
            JobReader.Read("test.job.yaml",
            "method: liner under mortar\nunits: inches\nstage: before liner\npre-slope: none\n",
            TheBook.Book.Vocabulary);
        problems.Should().ContainSingle();
        TheBook.Walk(job!).Checks.Single(check => check.Rule.Number == 131).Result.Should().Be(Result.ToCheck);
    }
}
