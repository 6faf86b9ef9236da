using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Readings that contradict each other make what stands on them unknown, each of them named to read again.</summary>
public sealed class Contradicting
{
    private const string Pan = "method: liner under mortar\nunits: inches\nplumbing code: IRC 2021\n";

    [Fact]
    public void Two_readings_further_apart_than_their_marks_count_as_neither()
    {
        var check = Check(Pan + "curb: { cap adds: 1 }\nliner: { right: [4, 2] }", "liner/turn-up", "liner side/right");
        check.Result.Should().Be(Result.ReadAgain);
        Again(check).Should().Equal("liner side/right: top");
    }

    [Fact]
    public void Two_choices_that_differ_count_as_neither() =>
        Check(Pan + "drain: { body: clamping, weeps: [open, blocked] }", "drain/weeps", "drain").Result.Should().Be(Result.ReadAgain);

    /// <summary>9 in above the drain by the tape, 3 in by the sum of what is below it.</summary>
    [Fact]
    public void Two_ways_to_one_height_that_say_yes_and_no_are_both_named()
    {
        var check = Check(Pan + "drain: { top: 2 }\ncurb: { height: 3, cap adds: 0, above drain: 3 }", "curb/height", "curb");
        check.Result.Should().Be(Result.ReadAgain);
        Again(check).Should().BeEquivalentTo("curb: above drain", "curb: height", "curb: cap adds", "drain: top");
    }

    [Fact]
    public void What_does_not_stand_on_them_is_judged() =>
        Check(Pan + "curb: { cap adds: 1 }\nliner: { right: [4, 2], left: 4 }", "liner/turn-up", "liner side/left")
            .Result.Should().Be(Result.Ok);

    private static Check Check(string job, string rule, string part) =>
        TheBook.Walk(job).Checks.Single(check => check.Rule.Id == rule && check.Part.Id == part);

    private static IEnumerable<string> Again(Check check) =>
        check.Judgement.Hangs.Where(hang => hang.Near).Select(hang => hang.Id.ToString());
}
