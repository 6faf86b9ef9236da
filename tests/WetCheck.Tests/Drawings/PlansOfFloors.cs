using WetCheck.Reporting;
using static WetCheck.Tests.Pan.FloorOfAJob;

namespace WetCheck.Tests.Drawings;

/// <summary>
/// Plans keep to the usual ways of engineering drawings: ISO 128 line weights, feet and inches as US architectural
/// texts have them.
/// </summary>
public sealed class PlansOfFloors
{
    private const double Inch = 25.4;

    [Fact]
    public void A_changed_size_changes_lines_labels_and_words()
    {
        var (one, other) = (Drawn.Plan(Inches + Rectangle(60, 36)), Drawn.Plan(Inches + Rectangle(54, 36)));
        one.Texts.Should().Contain("5'-0\"").And.NotContain("4'-6\"");
        other.Texts.Should().Contain("4'-6\"").And.NotContain("5'-0\"");
        one.Told.Should().Contain("5'-0\"").And.NotContain("4'-6\"");
        other.Told.Should().Contain("4'-6\"");
        one.Lines("cut").Should().NotBeEquivalentTo(other.Lines("cut"));
    }

    [Fact]
    public void Lines_are_true_to_the_figures()
    {
        var plan = Drawn.Plan(Inches + Rectangle(60, 36));
        const double Scale = Inch / 16;
        plan.Lines("cut").Should().Contain((60 * Scale, 0, 0, 0), "the back wall is cut");
        plan.Lines("seen").Should().Contain((0, 36 * Scale, 60 * Scale, 36 * Scale), "one sees the curb at the entry below the cut");
        plan.Lines("thin").Should().Contain((0, 36 * Scale, 30 * Scale, 18 * Scale), "a fold runs from the corner to the drain");
    }

    [Fact]
    public void It_has_a_title_words_and_real_text()
    {
        var plan = Drawn.Plan("job: Elm & <Oak>\n" + Inches + Rectangle(60, 36));
        plan.Title.Should().Be("Elm & <Oak>: plan of the shower floor");
        plan.Root.Attribute("role")!.Value.Should().Be("img");
        plan.Root.Attribute("aria-labelledby")!.Value.Should().Be("plan-title plan-told");
        plan.Told.Should().Contain("Left wall (B)").And.Contain("1/2\" per ft").And.Contain("Drain 30\" from the left");
        plan.Texts.Should().Contain(["ENTRY (A)", "Left wall (B)", "Back wall (C)", "Right wall (D)", "1/2\" per ft", "+3/4\""]);
    }

    [Fact]
    public void Three_weights_of_line_and_nothing_but_black()
    {
        var text = Drawn.Plan(Inches + Rectangle(60, 36)).Text;
        text.Should().Contain(".cut{stroke-width:0.7}").And.Contain(".seen{stroke-width:0.35}").And.Contain(".thin{stroke-width:0.25}");
        text.Should().NotMatchRegex("#(?!000[;}\"])[0-9a-fA-F]{3}").And.NotMatchRegex("rgb|opacity|gray|grey");
    }

    [Theory]
    [InlineData(60, "5'-0\"")]
    [InlineData(42.5, "3'-6 1/2\"")]
    [InlineData(48, "4'-0\"")]
    [InlineData(48.75, "4'-0 3/4\"")]
    public void Sizes_are_feet_and_inches_from_a_foot_on(double width, string said) =>
        Drawn.Plan(Inches + Rectangle(width, 36)).Texts.Should().Contain(said);

    [Fact]
    public void Sizes_below_a_foot_are_inches() => Drawn.Plan(Inches + Rectangle(60, 36, 30, 6.5)).Texts.Should().Contain("6-1/2\"");

    [Fact]
    public void A_metric_job_is_drawn_in_millimetres()
    {
        var plan = Drawn.Plan(Metric + Rectangle(1500, 900));
        plan.Texts.Should().Contain("1500 mm").And.Contain("This bar is 50 mm.").And.NotContain(text => text.Contains('"'));
        plan.Lines("seen").Should().Contain(line => Math.Abs(line.X2 - line.X1 - 50) < 1e-6 && line.Y1 == line.Y2);
    }

    [Fact]
    public void The_bar_is_two_inches_and_says_so()
    {
        var plan = Drawn.Plan(Inches + Rectangle(60, 36));
        plan.Texts.Should().Contain(["This bar is 2 inches.", "If not, the print was scaled."]);
        plan.Lines("seen").Should().Contain(line => Math.Abs(line.X2 - line.X1 - 50.8) < 1e-6 && line.Y1 == line.Y2);
    }

    /// <summary>Letters go clockwise from the entry, the same as in every list.</summary>
    [Fact]
    public void Walls_bear_the_letters_of_the_lists()
    {
        foreach (var place in TheBook.Book.Vocabulary.Places.Where(place => place.Name is "left" or "back" or "right"))
        {
            Drawn.Plan(Inches + Rectangle(60, 36)).Texts.Should()
                .Contain(text => text.EndsWith($"({place.Letters})", StringComparison.Ordinal)
                && text.StartsWith(char.ToUpperInvariant(place.Name[0])));
        }
    }

    [Fact]
    public void It_stands_alone() =>
        Drawn.Plan(Inches + Rectangle(60, 36)).Text.Should()
        .NotMatchRegex("<script|href|@import|@font-face|src=|<foreignObject");

    [Fact]
    public void No_floor_no_plan() => Drawn.PlanOf(TheBook.Walk("units: inches\nshower: { drain at: \"30, 18\" }\n")).Should().BeNull();

    /// <summary>
    /// To its grate 60 x 36 has no level rim along the folds, as the falls sheet says: the plan says so too, and draws
    /// what it says.
    /// </summary>
    [Fact]
    public void A_floor_that_does_not_fit_is_drawn_with_its_grate_and_says_so()
    {
        var plan = Drawn.Plan(Inches + Grate + Rectangle(60, 30));
        plan.Told.Should().Contain("drain with its grate").And.Contain("No level rim keeps to these limits");
        plan.Texts.Should().Contain("No level rim keeps to these limits: see the falls.");
    }

    /// <summary>The plan of a list: every number at a place of the floor, and in the words beside it.</summary>
    [Fact]
    public void Numbers_stand_where_the_faults_are()
    {
        var html = PunchPage.Html(TheBook.Walk(TheBook.Example("juniper")), "en", "now");
        var from = html.IndexOf("<svg class=\"drawing\"", StringComparison.Ordinal);
        var plan = new Drawn(html[from..(html.IndexOf("</svg>", from, StringComparison.Ordinal) + 6)]);
        plan.Texts.Should().Contain(["221-A", "226-CD", "214-D", "132-B", "208", "305-D", "712"]);
        plan.Told.Should().Contain("226-CD: corner right-back").And.Contain("208: drain");
    }

    [Fact]
    public void A_floor_nobody_measured_has_a_plan_that_says_it_is_not_to_scale()
    {
        var html = PunchPage.Html(TheBook.Walk("method: liner under mortar\nunits: inches\nplumbing code: IRC "
            + "2021\nliner falls: { left: 1/8 over 30 }\n"), "en", "now");
        html.Should().Contain("Not to scale: the floor&#39;s size is not known.").And.NotContain("This bar is");
    }
}
