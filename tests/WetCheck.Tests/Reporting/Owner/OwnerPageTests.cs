using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting.Owner;

/// <summary>Row 13: the owner's page hides nothing that the setter's list shows, under the same numbers.</summary>
public sealed class OwnerPageTests
{
    [Fact]
    public void It_has_every_number_of_the_setters_list_with_its_result()
    {
        foreach (var (name, walk) in Depth.OneOf(2, Walks.All))
        {
            var list = Listing.Of(walk, "en", "");
            var page = OwnerPages.Of(walk);
            page.Groups.SelectMany(group => group.Entries.Select(entry => (group.Key, entry.Number)))
                .Should().Equal(list.Groups.SelectMany(group => group.Items.Select(item => (group.Key, item.Number))), name);
            page.Hidden.Select(line => line.Number).Should().Equal(list.Hidden.Select(line => line.Number), name);
            page.Care.Select(line => line.Number).Should().Equal(list.Cautions.Select(line => line.Number), name);
            var asked = page.Nobody.Concat(page.See.SelectMany(section => section.Lines)).Select(line => line.Number).ToHashSet();
            list.Looks.Take(Listing.LooksShown).Select(look => look.Number).Except(asked).Should().BeEmpty(name);
        }
    }

    [Fact]
    public void The_numbers_are_the_same_in_Spanish()
    {
        foreach (var (name, walk) in Walks.Examples)
        {
            Numbers(OwnerPages.Of(walk, "es")).Should().Equal(Numbers(OwnerPages.Of(walk)), name);
        }
    }

    [Fact]
    public void The_page_to_give_is_the_setters_list_unchanged()
    {
        foreach (var (name, walk) in Walks.Examples)
        {
            OwnerPages.Give(walk, "en").Should().EndWith(PunchPage.Markdown(walk, "en", Walks.When), name);
            PunchPage.Html(walk, "en", Walks.When, Reader.Owner).Should()
                .Contain(PunchPage.Punch(walk, Listing.Of(walk, "en", Walks.When)).Html, name);
        }
    }

    [Fact]
    public void Stop_is_said_for_each_Stop_each_cover_and_each_trade() =>
        OwnerPages.Of(Walks.Example("juniper")).StopIf.Should().Equal(
            "Before any more work, and before any water, if 226-CD is not fixed.",
            "Before any more work, and before any water, if 221-A is not fixed.",
            "Before the boards, if 214-D is not settled.",
            "Before the bed, if 132-B, 208 or 305-D is not settled.",
            "Before tile, if 341-W is not settled.",
            "Before that place is closed, if the electrician has not seen 712.");

    [Fact]
    public void Each_entry_has_a_question_and_a_good_answer()
    {
        foreach (var (name, walk) in Depth.OneOf(2, Walks.All))
        {
            foreach (var entry in OwnerPages.Of(walk).Groups.SelectMany(group => group.Entries))
            {
                entry.Seen.Should().MatchRegex("[.?]$", $"{name} {entry.Number}").And.NotContain("{");
                entry.Ask.Should().StartWith("Ask: \"").And.MatchRegex("\\?\"( \\(|$)", $"{name} {entry.Number}").And.NotContain("{");
                entry.Good.Should().StartWith("Good: ").And.EndWith(".", $"{name} {entry.Number}").And.NotContain("{")
                    .And.NotContain("the limit");
            }
        }
    }

    [Fact]
    public void Where_nothing_was_read_it_tells_what_to_ask_to_see_before_each_cover()
    {
        var page = OwnerPages.Of(Walks.Example("five-answers"));
        page.IsUnread.Should().BeTrue();
        page.Groups.Should().BeEmpty();
        page.See.Select(section => section.Title.Split(" (")[0]).Should()
            .Equal("Now", "Before the BOARDS", "Before the BED", "Before the curb is faced",
            "Before the floor is closed", "Before tile", "Before GROUT", "Before SIGN-OFF");
        page.See.Should().OnlyContain(section => section.Lines.Count <= AskToSee.AtMost);
        page.See.SelectMany(section => section.Lines).Should()
            .NotContain(line => line.Good.Contains("the limit", StringComparison.Ordinal)
            || line.See.Contains('{', StringComparison.Ordinal));
    }

    /// <summary>What the method has not, nobody is asked to see: no liner in a bonded shower, no curb in one without.</summary>
    [Fact]
    public void What_the_method_rules_out_is_not_asked_for()
    {
        var walk = TheBook.Walk("method: curbless bonded\nunits: inches\n");
        var page = OwnerPages.Of(walk);
        page.IsUnread.Should().BeTrue();
        var gone = walk.Book.Rules.Where(rule =>
            rule.Part.Name is "liner" or "liner side" or "fastener" or "pre-slope" or "curb")
            .Select(rule => rule.Number.ToString(System.Globalization.CultureInfo.InvariantCulture)).ToList();
        gone.Should().NotBeEmpty();
        page.See.SelectMany(section => section.Lines).Select(line => line.Number.Split('-')[0]).Should()
            .NotContain(number => gone.Contains(number));
        page.See.SelectMany(section => section.Lines).Select(line => line.Number).Should().Contain("414");
    }

    [Fact]
    public void Nothing_to_fix_is_a_calm_page_of_the_same_shape()
    {
        var page = OwnerPages.Keep(Walks.Example("juniper-made-right"), "en");
        page.Should().Contain("Nothing to fix").And.Contain("SAY THIS")
            .And.Contain("It doesn't say the shower is good.").And.NotContain("STOP");
    }

    [Fact]
    public void Values_that_could_not_be_read_are_told()
    {
        var walk = Walks.Example("juniper");
        var blank = new Problem("not-a-tape-fraction", new At(walk.Job.File, 36, 12), "", "  right: 2-3/7", Effect.Blank);
        OwnerPages.Keep(walk with { Problems = [blank] }, "en").Should().Contain("could not be read. It counts as blank.");
    }

    [Fact]
    public void Many_Stops_go_on_over_the_page()
    {
        var walk = Walks.Example("juniper");
        var stop = walk.Entries.First(entry => entry.Number == "226-CD");
        var many = walk with { Entries = [.. Enumerable.Range(1, 9).Select(i => stop with { Number = $"{i}-D" })] };
        PunchPage.Html(many, "en", "", Reader.Owner).Should().Contain("STOPS GO ON");
        PunchPage.Html(walk, "en", "", Reader.Owner).Should().NotContain("STOPS GO ON");
    }

    private static IEnumerable<string> Numbers(OwnerPage page) =>
        page.Groups.SelectMany(group => group.Entries.Select(entry => entry.Number))
        .Concat(page.Nobody.Select(line => line.Number))
        .Concat(page.See.SelectMany(section => section.Lines.Select(line => line.Number)));
}
