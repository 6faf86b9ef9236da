using System.Text.RegularExpressions;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Shows;

/// <summary>
/// Honest disputes of the field notes (D-xx), in <c>tests/jobs/disputes.yaml</c>: both sides and what decides while the decider is not
/// known, one side when it is, and silence where nobody can settle it.
/// </summary>
public sealed partial class Disputes
{
    private const int Known = 48;
    private static readonly PlannedRows s_rows = new("tests/jobs/disputes.yaml");

    public static TheoryData<string, int> Jobs =>
        [.. s_rows.All.SelectMany(row => Enumerable.Range(0, row.Parts("jobs").Count)
        .Select(job => (row["row"]!, job)))];

    [Fact]
    public void Each_is_a_row() =>
        s_rows.All.Select(row => row["row"]).Should()
        .Equal(Enumerable.Range(1, Known).Select(number => $"D-{number:00}"));

    [Theory]
    [MemberData(nameof(Jobs))]
    public void It_is_told_as_it_stands(string row, int job)
    {
        var planned = s_rows[row].Parts("jobs")[job];
        var walk = TheBook.Walk(planned["job"]!);
        if (planned["number"] is not { } number)
        {
            planned["result"].Should().Be("silent");
            walk.ToFix.Select(entry => entry.Number).Should().BeEmpty();
            walk.Notes.Select(note => $"{note.Rule.Number}").Should().BeEquivalentTo(planned.List("notes"));
            return;
        }

        var (result, said) = Told(walk, number);
        result.Should().Be(planned["result"], said);
        planned.List("prints").Where(words => !said.Contains(words, StringComparison.Ordinal)).Should().BeEmpty("it says: " + said);
        planned.List("not").Where(words => said.Contains(words, StringComparison.Ordinal)).Should().BeEmpty("it says: " + said);
    }

    private static (string? Result, string Said) Told(Walk walk, string number) =>
        walk.Entries.SelectMany(entry => entry.Also.Prepend(entry)).FirstOrDefault(entry => entry.Number == number) is { } entry
            ? (Keys.Of(entry.Result), Plain(WhyText.Of(walk, entry, "en", "")))
            : walk.Notes.FirstOrDefault(note => $"{note.Rule.Number}" == number) is { } shown
                ? (Keys.Of(shown.Result), Plain(WhyText.Of(walk, shown, "en", "")))
                : (null, $"no {number} among {string.Join(", ", walk.Entries.Select(one => one.Number))}");

    /// <summary>Without the breaks of lines and columns.</summary>
    private static string Plain(string text) => Spaces().Replace(text, " ");

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
