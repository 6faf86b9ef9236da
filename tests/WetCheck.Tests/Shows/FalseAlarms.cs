using System.Text.RegularExpressions;
using WetCheck.Model;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Shows;

/// <summary>What is often called a fault and is none stays silent; its twin, one fact moved past its limit, does not.</summary>
public sealed partial class FalseAlarms
{
    private const string File = "tests/jobs/false-alarms.yaml";

    public static TheoryData<string> Rows => [.. Entries().Select(entry => entry.Row)];

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_facts_are_silent(string row)
    {
        var walk = TheBook.Walk(Of(row).Job);
        walk.ToFix.Select(entry => entry.Number).Should().BeEmpty();
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Its_rules_read_the_facts(string row)
    {
        var entry = Of(row);
        var walk = TheBook.Walk(entry.Job);
        var met = walk.Checks.Where(check => check.Result == Result.Ok || check.Paper == Paper.Good).Select(check => check.Rule.Number).Distinct();
        met.Should().Contain(entry.Reads, "each rule that reads the facts must find them met, not pass them by");
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_twin_is_a_correction(string row)
    {
        var entry = Of(row);
        var walk = TheBook.Walk(TheBook.With(TheBook.Job(entry.Job), entry.Twin));
        walk.ToFix.Select(one => one.Number).Should().Contain(entry.Correction);
    }

    private static Entry Of(string row) => Entries().Single(entry => entry.Row == row);

    private static IEnumerable<Entry> Entries()
    {
        foreach (Match match in EntryText().Matches(Repository.Read(File)))
        {
            yield return new Entry(match.Groups["row"].Value, match.Groups["job"].Value, [.. match.Groups["reads"].Value.Split(',').Select(int.Parse)],
                match.Groups["twin"].Value, match.Groups["correction"].Value);
        }
    }

    [GeneratedRegex("""- row: (?<row>\S+)\n  says: .*\n  job: (?<job>\{.*\})\n  reads: \[(?<reads>.*)\]\n  twin: "(?<twin>.*)"\n  correction: "?(?<correction>[\w-]+)"?\n""")]
    private static partial Regex EntryText();

    private sealed record Entry(string Row, string Job, IReadOnlyList<int> Reads, string Twin, string Correction);
}
