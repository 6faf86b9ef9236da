using System.Text.RegularExpressions;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting;

/// <summary>Row 19: a message holds the verdict in 160 characters, an entry in 100, and says how many it leaves out.</summary>
public sealed partial class MessageTests
{
    [Theory]
    [InlineData(Reader.Setter)]
    [InlineData(Reader.Helper)]
    [InlineData(Reader.Owner)]
    public void It_fits(Reader reader)
    {
        foreach (var (name, walk) in Depth.OneOf(2, Walks.All))
        {
            foreach (var language in new[] { "en", "es" })
            {
                var lines = Lines(walk, language, reader);
                lines[0].Length.Should().BeLessThanOrEqualTo(160, name);
                Entries(lines, walk, language, reader).Where(line => line.Length > 100).Should().BeEmpty(name);
                string.Concat(lines)
                    .Where(character => character > '~'
                    && (language == "en" || !"áéíóúüñÁÉÍÓÚÑ¿¡º".Contains(character, StringComparison.Ordinal))).Should()
                    .BeEmpty($"{name} {language}");
            }
        }
    }

    [Fact]
    public void Spanish_keeps_its_accents() =>
        string.Join('\n', Lines(Walks.Example("juniper"), "es")).Should().Contain("NO ESTÁ LISTO")
            .And.Contain("Desagüe").And.Contain("más");

    [Theory]
    [InlineData(Reader.Setter)]
    [InlineData(Reader.Helper)]
    [InlineData(Reader.Owner)]
    public void From_none_to_two_hundred_findings_it_fits(Reader reader)
    {
        // About twenty, which is where a message ends, every count is tried.
        foreach (var count in Enumerable.Range(0, 24).Concat(Depth.OneOf(44, Enumerable.Range(24, 177))))
        {
            var many = HelperTests.Many(Walks.Example("juniper"), count);
            foreach (var language in new[] { "en", "es" })
            {
                var lines = Lines(many, language, reader);
                lines[0].Length.Should().BeLessThanOrEqualTo(160);
                Entries(lines, many, language, reader).Where(line => line.Length > 100).Should().BeEmpty();
                var said = lines.Count(line => NumberFirst().IsMatch(line));
                said.Should().Be(Math.Min(count, 20));
                var phrases = new Phrases(TheBook.Book, language);
                lines.Any(line => line == phrases.Count("say.more", count - 20) + ".").Should().Be(count > 20);
            }
        }
    }

    [Fact]
    public void It_names_what_is_to_be_looked_at()
    {
        Lines(Walks.Example("juniper")).Should().Contain("To check: 610, 228, 229, 605, 364, 363, 604, 212-C, 383 and 21 more.");
        Lines(Walks.Example("five-answers")).Should()
            .Contain(line => line.StartsWith("To check: 226-AB, 610, ", StringComparison.Ordinal)
            && line.EndsWith(" and 39 more.", StringComparison.Ordinal))
            .And.Contain("Hidden now: 131, 139, 140, 210, 213, 216, 232.");
    }

    [Fact]
    public void The_verdict_is_first_and_the_closing_sentence_last()
    {
        var lines = Lines(Walks.Example("juniper"));
        lines[0].Should().Be("Juniper Court, upstairs hall bath: NOT READY for the flood test. 2 STOP, 6 more, 3 of them on paper.");
        lines.Should().Contain("214-D on paper Right wall: liner too low. Found 2-3/8\" above the rough curb. Needs 2-7/8\".");
        lines[^1].Should()
            .Be("A record of what was seen and measured. Not a building-department approval. Local code and the licensed trades decide.");
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

    private static string[] Lines(Walk walk, string language = "en", Reader reader = Reader.Setter) =>
        PunchPage.Message(walk, language, Walks.When, reader).TrimEnd('\n').Split('\n');

    /// <summary>All between the first line and the counts, which an owner reads first.</summary>
    private static IEnumerable<string> Entries(string[] lines, Walk walk, string language, Reader reader)
    {
        var list = Listing.Of(walk, language, "");
        var counts = list.Counts;
        if (reader == Reader.Owner)
        {
            string[] ends =
                [list.Phrases["owner.message-say"], .. list.Cautions.Select(line => line.Number + " "),
                .. list.Heading.Codes.Select(Sentence.Capital), list.Heading.Book];
            return lines.Skip(2).TakeWhile(line => !ends.Any(end => line.StartsWith(end, StringComparison.Ordinal)));
        }

        return lines.Skip(1).TakeWhile(line => !line.StartsWith(counts, StringComparison.Ordinal));
    }

    [GeneratedRegex(@"^\d{1,3}-D ")]
    private static partial Regex NumberFirst();
}
