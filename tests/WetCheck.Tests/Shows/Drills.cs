using WetCheck.Model;
using static WetCheck.Tests.Pan.FloorOfAJob;

namespace WetCheck.Tests.Shows;

/// <summary>Faults laid out for a helper to find, as readings, in <c>tests/jobs/drills.yaml</c>: found, and nothing else.</summary>
public sealed class Drills
{
    private const int Known = 16;
    private const string Floor =
        "method: liner under mortar\nunits: inches\nplumbing code: IRC 2021\nfloor: { rim: 11/16, judged: along any "
        + "path, figure: inches }\n";
    private static readonly PlannedRows s_rows = new("tests/jobs/drills.yaml");

    public static TheoryData<string> Rows => s_rows.Names;

    [Fact]
    public void Each_is_a_row() =>
        s_rows.All.Select(row => row["row"]![..4]).Distinct().Order().Should()
        .Equal(Enumerable.Range(1, Known).Select(number => $"R-{number:00}"));

    [Theory]
    [MemberData(nameof(Rows))]
    public void It_is_found_and_nothing_else(string row)
    {
        var walk = TheBook.Walk(s_rows[row]["job"]!);
        walk.ToFix.Select(entry => entry.Number).Should().BeEquivalentTo(s_rows[row].List("finds"));
        walk.Entries.Where(entry => entry.Result == Result.ReadAgain).Select(entry => entry.Number).Should()
            .BeEquivalentTo(s_rows[row].List("again"));
        walk.Notes.Select(note => $"{note.Rule.Number}").Should().BeEquivalentTo(s_rows[row].List("notes"));
    }

    /// <summary>That they are right is tested with the false alarms.</summary>
    [Theory]
    [MemberData(nameof(Rows))]
    public void Two_that_look_like_it_are_named(string row) =>
        s_rows[row].List("look-alikes").Should().HaveCount(2).And.BeSubsetOf(FalseAlarms.Rows.Select(one => one.Data));

    /// <summary>
    /// what no rim can mend, in figures (O-05, C-22): 0.246 in per ft along the folds is short, 0.55 across is
    /// steep.
    /// </summary>
    [Fact]
    public void R04_both_limits_at_once_and_a_way_out()
    {
        var one = Case(Told(Inches + Rectangle(60, 30)).Json, "along-folds", "point");
        one["feasible"]!.GetValue<bool>().Should().BeFalse();
        var scale = 0.6875 / Number(one["height"]);
        (Slope(one, "back") * scale).Should().BeApproximately(0.55, 5e-4);
        (Number(one["flattest"]) * scale).Should().BeApproximately(0.246, 5e-4);
        one["ways_out"]!.AsArray().Should().NotBeEmpty();
    }
}
