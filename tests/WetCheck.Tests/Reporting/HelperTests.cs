using System.Text.RegularExpressions;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting;

/// <summary>
/// Row 15: a helper can work by it. Same row, same digits; twelve words a sentence; five things a page; other trades
/// last.
/// </summary>
public sealed partial class HelperTests
{
    [Fact]
    public void Both_languages_have_the_same_rows_with_the_same_figures()
    {
        foreach (var (name, walk) in Walks.All)
        {
            var (spanish, english) = (HelperSheet.Of(walk, "es", ""), HelperSheet.Of(walk, "en", ""));
            spanish.Sections.Select(section => (section.Key, section.Rows.Count)).Should()
                .Equal(english.Sections.Select(section => (section.Key, section.Rows.Count)), name);
            foreach (var (one, other) in Rows(spanish).Zip(Rows(english)))
            {
                one.Number.Should().Be(other.Number, name);
                Figures(one).Should().Equal(Figures(other), $"{name}: {one.Number}");
            }
        }
    }

    [Fact]
    public void No_sentence_has_more_than_twelve_words()
    {
        var tooLong = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var (_, walk) in Walks.All)
        {
            foreach (var language in new[] { "en", "es" })
            {
                var sheet = HelperSheet.Of(walk, language, "");
                var said = Rows(sheet).SelectMany(row => row.Lines.Append(row.Title)).Append(sheet.Stop)
                    .Concat(sheet.Top.Except(sheet.List.Unread)).Concat(sheet.ShowMe);
                tooLong.UnionWith(said.SelectMany(Sentences).Where(sentence => ShortSentences.CountOf(sentence) > 12));
            }
        }

        tooLong.Should().BeEmpty();
    }

    [Fact]
    public void No_page_has_more_than_five_things_and_other_trades_come_after_them()
    {
        foreach (var (name, walk) in Walks.All)
        {
            var sections = HelperSheet.Of(walk, "en", "").Sections;
            sections.Where(section => section.Key is "today" or "after").Should().OnlyContain(section => section.Rows.Count <= 5, name);
            var keys = sections.Select(section => section.Key).Where(key => key is "today" or "after" or "not-yours").ToList();
            keys.IndexOf("not-yours").Should().BeOneOf(-1, keys.Count - 1);
        }

        var many = Many(Walks.Example("juniper"), 12);
        HelperSheet.Of(many, "en", "").Sections.Where(section => section.Key is "today" or "after")
            .Select(section => section.Rows.Count).Should().Equal(5, 5, 2);
    }

    [Fact]
    public void What_lies_under_is_mended_first()
    {
        var sheet = HelperSheet.Of(Walks.Example("juniper"), "en", "");
        Numbers(sheet, "today").Should().Equal("132-B", "221-A", "214-D", "226-CD", "208");
        Numbers(sheet, "after").Should().Equal("305-D", "341-W");
        Numbers(sheet, "not-yours").Should().Equal("712");
        sheet.Stop.Should().Be("STOP. This is not ready for the flood test. Put nothing over it yet.");
        sheet.Top.Should().Contain("Tools: level, tape, pliers, wire.")
            .And.Contain(line => line.Contains("221-A, 226-CD", StringComparison.Ordinal));
        sheet.ShowMe.Should().Equal("Before you start, show me with the tape: 132-B and 221-A. Tell me why.");
    }

    /// <summary>Also one that is another trade's, which stands on a later page.</summary>
    [Fact]
    public void The_top_names_every_stop()
    {
        foreach (var (name, walk) in Walks.All)
        {
            var top = string.Join(' ', HelperSheet.Of(walk, "en", "").Top);
            walk.ToFix.Where(entry => entry.Severity == Severity.Stop
                && !top.Contains(entry.Number, StringComparison.Ordinal)).Should().BeEmpty(name);
        }
    }

    [Fact]
    public void Every_rule_that_brings_a_tool_is_in_the_book() =>
        TheBook.Book.Words["en"].Keys.Where(key => key.StartsWith("helper.bring.", StringComparison.Ordinal))
            .Where(key => TheBook.Book.Rules.All(rule => "helper.bring." + rule.Number != key)).Should().BeEmpty();

    [Fact]
    public void The_page_has_both_languages_in_one_row_and_says_draft()
    {
        foreach (var (name, walk) in Walks.Examples)
        {
            var page = PunchPage.Html(walk, "both", "", Reader.Helper);
            OneCell("es").Count(page).Should().Be(OneCell("en").Count(page), name);
            page.Should().Contain("Borrador");
            PunchPage.Html(walk, "en", "", Reader.Helper).Should().NotContain("lang=\"es\"");
        }
    }

    internal static Walk Many(Walk walk, int count)
    {
        var entry = walk.Entries.First(one => one.Number == "214-D");
        return walk with { Entries = [.. Enumerable.Range(1, count).Select(i => entry with { Number = $"{i}-D" })] };
    }

    private static IEnumerable<string> Numbers(HelperSheet sheet, string key) =>
        sheet.Sections.Where(section => section.Key == key).SelectMany(section => section.Rows)
        .Select(row => row.Number);

    private static IEnumerable<HelperRow> Rows(HelperSheet sheet) => sheet.Sections.SelectMany(section => section.Rows);

    private static IEnumerable<string> Figures(HelperRow row) =>
        row.Lines.Prepend(row.Title).SelectMany(line => Figure().Matches(line)).Select(match => match.Value)
        .Order(StringComparer.Ordinal);

    private static IEnumerable<string> Sentences(string text) => EndOfSentence().Split(text);

    private static Regex OneCell(string language) => new($"<(?:div|p|b|span) lang=\"{language}\"");

    [GeneratedRegex(@"\d[\d/.,'-]*\d|\d")]
    private static partial Regex Figure();

    [GeneratedRegex(@"(?<=[.?!]) ")]
    private static partial Regex EndOfSentence();
}
