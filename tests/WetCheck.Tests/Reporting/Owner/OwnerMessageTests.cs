using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting.Owner;

/// <summary>Row 19, for the owner: the verdict in 160 characters, an entry in 100, what is left out counted.</summary>
public sealed class OwnerMessageTests
{
    [Fact]
    public void It_fits()
    {
        foreach (var (name, walk) in Walks.All)
        {
            foreach (var language in new[] { "en", "es" })
            {
                var lines = Lines(walk, language);
                lines[0].Length.Should().BeLessThanOrEqualTo(160, name);
                lines.Where(line => line.Length > 100
                    && walk.Entries.Any(entry => line.StartsWith(entry.Number + " ", StringComparison.Ordinal)))
                    .Should().BeEmpty(name);
            }

            string.Concat(Lines(walk)).Where(character => character > '~').Should().BeEmpty(name);
        }
    }

    [Fact]
    public void It_is_in_the_owners_words_with_the_same_numbers()
    {
        var walk = Walks.Example("juniper");
        var lines = Lines(walk);
        lines[0].Should().Be("Juniper Court, upstairs hall bath: Don't let the shower floor be covered yet. And no test with water yet.");
        lines.Should().Contain("208 The weep holes are blocked. Ask: \"Can you show me they are open?\"");
        lines[^1].Should()
            .Be("A record of what was seen and measured. Not a building-department approval. Local code and the licensed trades decide.");
        foreach (var item in Listing.Of(walk, "en", "").Groups.SelectMany(group => group.Items))
        {
            lines.Should().ContainSingle(line => line.StartsWith(item.Number + " ", StringComparison.Ordinal));
        }
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
        var lines = Lines(walk with { Entries = [.. Enumerable.Range(1, count).Select(i => entry with { Number = $"{i}-D" })] });
        var said = lines.Count(line => line.Contains("too low for the finished step", StringComparison.Ordinal));
        said.Should().BeLessThanOrEqualTo(20);
        (said == count).Should().Be(!lines.Contains($"and {count - said} more."));
        lines[0].Length.Should().BeLessThanOrEqualTo(160);
    }

    [Fact]
    public void Where_nothing_was_read_it_tells_what_to_ask_to_see() =>
        Lines(Walks.Example("five-answers")).Should().Contain("Ask to see 226-AB: Each corner of the liner.");

    private static string[] Lines(Walk walk, string language = "en") =>
        PunchPage.Message(walk, language, Walks.When, Reader.Owner).TrimEnd('\n').Split('\n');
}
