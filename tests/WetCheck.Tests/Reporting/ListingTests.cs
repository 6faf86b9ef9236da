using System.Text.Json.Nodes;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting;

/// <summary>Rows 11, 13 and 16 of what a list must do, and the shapes of an unknown code.</summary>
public sealed class ListingTests
{
    private const string Head = "method: liner under mortar\nunits: inches\nstage: flood test\n";

    [Fact]
    public void Fourteen_low_nails_are_one_entry()
    {
        var list = Of(Head
            + "plumbing code: IRC 2021\ncurb: { cap adds: plan 1 }\nnails: { seen: all, left: \"1/8 below, 1/4 below, "
            + "3/8 below, 1/2 below, 5/8 below, 3/4 below, 7/8 below, 1 below, 1-1/8 below, 1-1/4 below, 1-3/8 below, "
            + "1-1/2 below, 1-5/8 below, 1-3/4 below\" }\n");
        var entry = list.Groups.SelectMany(group => group.Items).Should().ContainSingle().Subject;
        entry.Number.Should().Be("221-B");
        entry.What.Should().Be("14 fasteners through the liner");
        entry.Found.Should().Be("1-3/4\", 1-5/8\" and 1-1/2\" below the rough curb, and 11 more");
        entry.Also.Should().Equal("222-B");
        entry.Entry.Checks.Should().HaveCount(14);
        list.Verdict[0].Should().EndWith("1 to fix:");
    }

    [Fact]
    public void A_size_that_codes_judge_differently_names_both_and_what_settles_it()
    {
        var look = Of(Head + "shower: { size: 30 x 30 finished }\ncurb: { width: 0 }\n")
            .Looks.Single(one => one.Look.Fact == FactId.Code("plumbing"));
        look.Number.Should().Be("101");
        look.Title.Should().Be("Shower: shower too small? By which plumbing code?");
        look.Detail.Should().StartWith("Found").And.Contain("IRC and IPC: OK.").And.Contain("UPC asks floor area 1024 sq in or more.");
        look.Ask.Should().Be("Ask the building department which plumbing code applies.");
    }

    [Fact]
    public void Short_by_every_code_is_said_first()
    {
        var list = Of(Head + "curb: { cap adds: plan 1 }\nliner: { right: 2-1/2 }\n");
        var look = list.Looks[0];
        look.Short.Should().BeTrue();
        look.Detail.Should().Contain("2-1/2\" above the rough curb; cap adds 1\" planned")
            .And.Contain("IRC 2008 and older and UPC ask 3\" or more above the finished curb. IRC 2009 and later and IPC ask 2\" or more.");
        look.Title.Should().Be("214-D Right wall: liner too low, by which plumbing code? Short on paper by each");
    }

    [Fact]
    public void A_code_the_book_does_not_have_is_said_at_the_top() =>
        ScreenText.Of(Of(Head + "plumbing code: XYZ 2020\n")).Should().Contain("Plumbing code XYZ 2020 is not in this rule book:");

    [Fact]
    public void Codes_not_stated_are_told_as_tried() =>
        Of(Head + "liner: { left: 3 }\n").Heading.Codes.Should().Contain("plumbing code not stated, tried: IRC, IPC, UPC");

    [Fact]
    public void Lines_that_could_not_be_read_stand_beside_the_verdict()
    {
        var walk = Walks.Example("juniper");
        static Problem At(int line, Effect effect = Effect.Blank) =>
            new("unknown-unit", new At("juniper.job.yaml", line, 9), "say", "typed", effect);
        var list = Listing.Of(walk with { Problems = [At(26), At(17), At(17), At(30, Effect.Asked)] }, "en", Walks.When);
        list.Unread.Should().Equal("Lines 17, 26 could not be read. They count as blank.");
        ScreenText.Of(list).Should().Contain("\nLines 17, 26 could not be read. They count as blank.\n");
        Listing.Of(walk with { Problems = [At(9)] }, "en", "").Unread.Should().Equal("Line 9 could not be read. It counts as blank.");
    }

    [Fact]
    public void Every_form_has_the_same_numbers_and_counts()
    {
        foreach (var (name, walk) in Walks.Examples)
        {
            var list = Listing.Of(walk, "en", Walks.When);
            var json = JsonNode.Parse(JsonList.Of(walk, "en", Walks.When))!;
            json["findings"]!.AsArray().Select(finding => (finding!["number"]!.GetValue<string>(), finding["result"]!.GetValue<string>()))
                .Should().Equal(walk.Entries.Select(entry => (entry.Number, Keys.Of(entry.Result))), name);
            var listed = list.Groups.SelectMany(group => group.Items).Select(item => item.Number).ToList();
            listed.Should()
                .BeEquivalentTo(walk.Entries.Where(entry => entry.Result is Result.Correction or Result.ReadAgain)
                .Select(entry => entry.Number), name);
            var forms = new[]
            {
                ScreenText.Of(list), PunchPage.Html(walk, "en", Walks.When), PunchPage.Markdown(walk, "en", Walks.When),
                PunchPage.Message(walk, "en", Walks.When),
            };
            foreach (var form in forms)
            {
                listed.Where(number => !form.Contains(number, StringComparison.Ordinal)).Should().BeEmpty(name);
                form.Replace('\n', ' ').Should().Contain(list.Counts, name);
            }
        }
    }

    [Fact]
    public void Of_bounds_on_one_value_of_the_plan_the_tightest_is_held() =>
        Listing.Of(Walks.Example("juniper"), "en", Walks.When).Hold.Where(line => line.Text.Contains("cap adds", StringComparison.Ordinal))
            .Should().ContainSingle().Which.Text.Should().Be("Left wall: good on paper. Keep curb, cap adds: 1-1/4\" or less.");

    [Theory]
    [InlineData("juniper.job.yaml", "juniper", "juniper.html")]
    [InlineData("docs/examples/juniper.job.yaml", "docs/examples/juniper.job.yaml", "juniper.html")]
    [InlineData("unit 4.job.yaml", "\"unit 4\"", "\"unit 4.html\"")]
    [InlineData("room.yaml", "room.yaml", "room.yaml.html")]
    public void The_next_commands_can_be_typed_as_they_are_printed(string file, string command, string page)
    {
        var walk = Walks.Example("juniper");
        var list = Listing.Of(walk with { Job = walk.Job with { File = file } }, "en", "");
        (list.Command, list.Page).Should().Be((command, page));
    }

    private static Listing Of(string text) => Listing.Of(TheBook.Walk("job: A room\n" + text), "en", Walks.When);
}
