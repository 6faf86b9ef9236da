using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting;

/// <summary>Row 19: a message holds the verdict in 160 characters, an entry in 100, and says how many it leaves out.</summary>
public sealed class MessageTests
{
    [Fact]
    public void It_fits()
    {
        foreach (var (name, walk) in Walks.All)
        {
            var lines = Lines(walk);
            lines[0].Length.Should().BeLessThanOrEqualTo(160, name);
            lines.Skip(1).Where(line => char.IsDigit(line[0]) && line.Length > 100).Should().BeEmpty(name);
            string.Concat(lines).Where(character => character > '~').Should().BeEmpty(name);
        }
    }

    [Fact]
    public void The_verdict_is_first_and_the_closing_sentence_last()
    {
        var lines = Lines(Walks.Example("juniper"));
        lines[0].Should().Be("Juniper Court, upstairs hall bath: NOT READY for the flood test. 2 STOP, 6 more, 3 of them on paper.");
        lines.Should().Contain("214-D on paper Right wall: liner too low. Found 2-3/8\" above the rough curb. Needs 2-7/8\".");
        lines[^1].Should().Be("A record of what was seen and measured. Not a building-department approval. Local code and the licensed trades decide.");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(20)]
    [InlineData(21)]
    [InlineData(200)]
    public void Any_number_of_findings_fits_and_none_is_hidden_in_silence(int count)
    {
        var walk = Walks.Example("juniper");
        var entry = walk.Entries.First(one => one.Number == "214-D");
        var many = walk with { Entries = [.. Enumerable.Range(1, count).Select(i => entry with { Number = $"{i}-D" })] };
        var lines = Lines(many);
        var said = lines.Count(line => line.Contains("liner too low", StringComparison.Ordinal));
        said.Should().BeLessThanOrEqualTo(20);
        (said == count).Should().Be(!lines.Any(line => line == $"and {count - said} more."));
        lines[0].Length.Should().BeLessThanOrEqualTo(160);
        if (count == 0)
        {
            lines[0].Should().NotContain("STOP").And.NotContain("NOT READY");
        }
    }

    [Fact]
    public void A_long_name_of_a_job_is_cut_not_the_verdict()
    {
        var walk = Walks.Example("juniper");
        var named = Lines(walk with { Job = walk.Job with { Name = new string('x', 400) } });
        named[0].Should().HaveLength(160).And.Contain("NOT READY for the flood test.");
    }

    private static string[] Lines(Walk walk) => PunchPage.Message(walk, "en", Walks.When).TrimEnd('\n').Split('\n');
}
