using WetCheck.Model;

namespace WetCheck.Tests.Shows;

/// <summary>
/// What is often called a fault and is none, by the codes of the trade's list of false alarms (common practice): nothing is to be fixed,
/// and the rules that read the facts find them met. Its twin, one fact moved past its limit, is a Correction.
/// </summary>
public sealed class FalseAlarms
{
    private const int Known = 48;
    private static readonly PlannedRows s_rows = new("tests/jobs/false-alarms.yaml");

    public static TheoryData<string> Rows => s_rows.Names;

    public static TheoryData<string> RowsThatAreRead => [.. s_rows.All.Where(row => row["reads"] is not null).Select(row => row["row"]!)];

    [Fact]
    public void Each_is_a_row() =>
        s_rows.All.Select(row => row["row"]).Order().Should()
        .Equal(Enumerable.Range(1, Known).Select(number => $"F-{number:00}"));

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_facts_are_silent(string row) =>
        TheBook.Walk(s_rows[row]["job"]!).ToFix.Select(entry => entry.Number).Should().BeEmpty();

    [Theory]
    [MemberData(nameof(RowsThatAreRead))]
    public void Its_rules_read_the_facts(string row)
    {
        var met = TheBook.Walk(s_rows[row]["job"]!)
            .Checks.Where(check => check.Result == Result.Ok || check.Paper == Paper.Good)
            .Select(check => check.Rule.Number).Distinct();
        met.Should().Contain(s_rows[row].List("reads").Select(int.Parse),
            "each rule that reads the facts must find them met, not pass them by");
    }

    /// <summary>One state's permission (F-30) has no limit that a fact could pass; a usual way of cutting (F-39) is a Note.</summary>
    [Theory]
    [MemberData(nameof(Rows))]
    public void The_twin_is_a_correction(string row)
    {
        if (s_rows[row]["twin"] is not { } twin)
        {
            row.Should().Be("F-30");
            return;
        }

        var walk = TheBook.Walk(TheBook.With(TheBook.Job(s_rows[row]["job"]!), twin));
        if (s_rows[row]["note"] is { } note)
        {
            row.Should().Be("F-39");
            walk.Notes.Select(one => one.Rule.Number).Should().Contain(int.Parse(note));
            return;
        }

        walk.ToFix.Select(one => one.Number).Should().Contain(s_rows[row]["correction"]);
    }
}
