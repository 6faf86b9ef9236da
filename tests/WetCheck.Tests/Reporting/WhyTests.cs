using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting;

/// <summary>What stands behind a line: where it was read, as it was counted, the limit on the same tape, who says so, other ways.</summary>
public sealed class WhyTests
{
    [Fact]
    public void Every_entry_and_every_rule_can_be_explained()
    {
        var faults = Walks.Examples.SelectMany(one => one.Walk.Entries.Select(entry => WhyText.Of(one.Walk, entry, "en", Walks.When)))
            .Concat(TheBook.Book.Rules.Select(rule => WhyText.Of(TheBook.Book, rule, "en")))
            .SelectMany(text => text.Split('\n'))
            .Where(line => line.Length > Column.Width || line.Contains('{', StringComparison.Ordinal)
                || line.Any(character => character > '~'));
        faults.Distinct().Should().BeEmpty();
    }

    [Fact]
    public void A_correction_on_paper_tells_the_whole_way() => Why("juniper", "214-D").Should()
        .StartWith("214-D - Right wall: liner too low - CORRECTION, ON PAPER - Before the boards\n")
        .And.Contain("\nFound       2-3/8\" above the rough curb. Tape, MR, 2026-11-25 (line 36).\n")
        .And.Contain("\nCounted as  Curb, cap adds 7/8\" planned (line 31).\n")
        .And.Contain("\nShould be   2\" or more above the finished curb: 2-7/8\" on your tape.\n")
        .And.Contain("\nShort by    1/2\". A tape to 1/16\" can't miss that.\n")
        .And.Contain("\nWho says    IRC 2021 P2709.2, second-hand.\n            Ask your building department.\n")
        .And.Contain("\nElsewhere   Top 3\" or more above the finished curb (IRC 2008 and older or\n            UPC).\n")
        .And.Contain("\nWould also  Curb, cap adds: 3/8\" or less.\n")
        .And.Contain("\nDone it?    wetcheck look juniper 214-D\n")
        .And.Contain("liner/turn-up. Rule book: inch and metric,");

    [Fact]
    public void Members_of_an_entry_are_named_worst_first() =>
        Why("juniper", "221-A").Should()
            .MatchRegex("One by one  221-A2 Correction, 2-5/8\" below the rough curb \\(line 43\\)\n +221-A1 Correction, 1-1/4\"");

    [Fact]
    public void Other_branches_of_a_rule_stand_as_they_are() =>
        Why("juniper", "712").Should().Contain("Would also  Up over 96\".\n").And.Contain("Whose work  ELECTRICIAN'S WORK\n");

    [Fact]
    public void An_open_check_says_what_it_hangs_on() =>
        Why("juniper", "212-C").Should().Contain("Hangs on    Liner, back wall, top: nobody has looked.\n");

    [Fact]
    public void A_rule_alone_tells_each_code_and_its_doubt() =>
        WhyText.Of(TheBook.Book, TheBook.Book.Rule(214)!, "en").Should()
            .StartWith("214 - Liner too low - Before cover\n")
            .And.Contain("To look at  How high does the liner stand above the rough curb?")
            .And.Contain("OK if       Top 2\" or more above the finished curb (IRC 2009 and later or\n            IPC), second-hand.\n")
            .And.Contain("Who says    IRC P2709.2, second-hand, 2009 to 2021.\n");

    private static string Why(string example, string number)
    {
        var walk = Walks.Example(example);
        return WhyText.Of(walk, walk.Entries.Single(entry => entry.Number == number), "en", Walks.When);
    }

    [Fact]
    public void A_photo_is_named_with_the_reading_it_shows()
    {
        var walk = TheBook.Walk("method: liner under mortar\nunits: inches\nstage: flood test\ndrain:\n  body: "
            + "clamping\n  weeps: { read: blocked, by: JM, date: 2026-11-25, photo: IMG 2041.jpg }");
        WhyText.Of(walk, walk.ToFix.Single(entry => entry.Number == "208"), "en", "").Should()
            .Contain("JM, 2026-11-25, photo IMG 2041.jpg");
    }
}
