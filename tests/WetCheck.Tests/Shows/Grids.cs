using WetCheck.Reporting;

namespace WetCheck.Tests.Shows;

/// <summary>
/// Published values and tables outside the project, in <c>tests/jobs/grids.yaml</c>, each with its source: right up to
/// them and wrong past them.
/// </summary>
public sealed class Grids
{
    private static readonly PlannedRows s_rows = new("tests/jobs/grids.yaml");

    public static TheoryData<string, string, string> Values =>
    [
        .. s_rows.All.SelectMany(row => row.List("right").Select(value => (row["row"]!, value, "ok"))
            .Concat(row.List("wrong").Select(value => (row["row"]!, value, "correction")))),
    ];

    [Theory]
    [MemberData(nameof(Values))]
    public void It_is_judged_as_published(string row, string value, string result)
    {
        var planned = s_rows[row];
        planned["source"].Should().NotBeNullOrEmpty();
        var walk = TheBook.Walk(planned["job"]!.Replace("{}", value, StringComparison.Ordinal));
        var entry = walk.Entries.SelectMany(one => one.Also.Prepend(one)).Single(one => one.Number == planned["number"]);
        Keys.Of(entry.Result).Should().Be(result, planned["source"]);
    }
}
