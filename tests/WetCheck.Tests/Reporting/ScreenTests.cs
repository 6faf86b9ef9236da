using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting;

/// <summary>Rows 8, 9, 10 and 19 of what a list must do: four lines an entry, 78 columns, eight lines at the end, no lecture.</summary>
public sealed class ScreenTests
{
    [Fact]
    public void No_line_is_longer_than_78() => EachList(list =>
        ScreenText.Of(list, all: true).Split('\n').Where(line => line.Length > Column.Width));

    [Fact]
    public void No_slot_is_left_unfilled() => EachList(list =>
        ScreenText.Of(list, all: true).Split('\n').Where(line => line.Contains('{', StringComparison.Ordinal)));

    [Fact]
    public void English_is_ascii() => EachList(list =>
        ScreenText.Of(list, all: true).Split('\n').Where(line => line.Any(character => character > '~')));

    [Fact]
    public void No_sentence_has_a_hole() => EachList(list => ScreenText.Of(list, all: true).Split('\n')
        .Where(line => line.Contains(" .", StringComparison.Ordinal) || line.Contains(". .", StringComparison.Ordinal)
            || line.Contains(" ,", StringComparison.Ordinal)
            || line.Contains("..", StringComparison.Ordinal)
                || line.TrimStart().Contains("  ", StringComparison.Ordinal)
                && !line.Contains("line ", StringComparison.Ordinal)
                && !line.Contains("wetcheck", StringComparison.Ordinal) && !char.IsDigit(line[1])));

    [Fact]
    public void An_entry_takes_four_lines() => EachList(list => list.Groups.SelectMany(group => group.Items)
        .Select(item => string.Join('\n', EntryText.Of(item, list.Phrases)))
        .Where(text => text.Split('\n').Length > 4));

    [Fact]
    public void An_entry_says_what_should_be_what_to_do_by_when_and_who_says_so() =>
        EachList(list => list.Groups.SelectMany(group => group.Items)
        .Where(item => item.What.Length == 0 || item.Do.Length == 0 || item.Before.Length == 0 || item.Says.Length == 0
            || item.Line.Length == 0 || (IsMeasured(item) && (item.Found.Length == 0 || item.Should.Length == 0)))
        .Select(item => $"{item.Number} {item.Found} | {item.Should} | {item.Do} | {item.Before} | {item.Says} | {item.Line}"));

    [Fact]
    public void The_end_is_eight_lines() => EachList(list =>
        ScreenText.End(list).Count() > 9 ? [string.Join('\n', ScreenText.End(list))] : []);

    [Fact]
    public void The_verdict_is_in_the_last_24_rows()
    {
        var lines = ScreenText.Of(Listing.Of(Walks.Example("juniper"), "en", Walks.When)).TrimEnd('\n').Split('\n');
        lines.TakeLast(24).Should().Contain(line => line.StartsWith("NOT READY for the flood test. 8 to fix:", StringComparison.Ordinal));
        lines[^1].Should().Be("To print it:          wetcheck punch juniper -o juniper.html");
    }

    [Fact]
    public void A_caution_is_one_line() => EachList(list => list.Cautions
        .Where(line => Column.Wrap(line.Text, Column.Numbered(line.Number)).Count > 1)
        .Select(line => line.Text));

    [Fact]
    public void Five_answers_make_at_most_40_lines_and_nine_looks()
    {
        var list = Listing.Of(Walks.Example("five-answers"), "en", Walks.When);
        var text = ScreenText.Of(list);
        text.TrimEnd('\n').Split('\n').Should().HaveCountLessThanOrEqualTo(40);
        list.Looks.Should().HaveCountGreaterThan(Listing.LooksShown);
        text.Should().Contain($"and {list.Looks.Count - Listing.LooksShown} more: wetcheck walk five-answers --all");
        ScreenText.Of(list, all: true).Should().Contain(list.Looks[^1].Number);
    }

    [Fact]
    public void Nothing_that_is_ok_is_listed_unless_all_is_asked_for()
    {
        var list = Listing.Of(Walks.Example("spruce"), "en", Walks.When);
        list.Tally.Ok.Should().BeGreaterThan(20);
        ScreenText.Of(list).Should().NotContain("133-A").And.Contain("NOTHING OWED that anyone can see now.");
        ScreenText.Of(list, all: true).Should().Contain("133-A");
    }

    /// <summary>Of something that is not there at all nothing was found: its name says it.</summary>
    private static bool IsMeasured(Item item) => item.Entry.Worst.Sides.Any(side => side.Tests.Count > 0);

    private static void EachList(Func<Listing, IEnumerable<string>> faults)
    {
        var found = Walks.All.SelectMany(one => faults(Listing.Of(one.Walk, "en", Walks.When))
            .Select(fault => $"{one.Name}:\n{fault}")).Distinct().ToList();
        string.Join("\n\n", found).Should().BeEmpty();
    }
}
