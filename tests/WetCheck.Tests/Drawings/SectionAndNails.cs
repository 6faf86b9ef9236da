using WetCheck.Flow;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Drawings;

/// <summary>Section, nail map and contours are true to the figures of their job, and change with them.</summary>
public sealed class SectionAndNails
{
    private const double Inch = 25.4;

    [Fact]
    public void The_section_has_each_layer_at_its_height()
    {
        var section = Draw(SectionDrawing.Of, DrawnJobs.Whole);
        const double Scale = Inch / 10;
        section.Lines("cut").Should()
            .Contain(line => line.X1 == -0.5 * Scale && line.Y1 == Math.Round(-0.5 * Scale, 3) && line.Y2 == 0,
            "the liner falls 1/2 in from the back wall to the drain");
        section.Lines("thin").Should()
            .Contain(line => line.Y1 == Math.Round(-5 * Scale, 3) && line.Y1 == line.Y2 && line.X1 == 0,
            "in a flood test water stands to the rough curb");
        section.Texts.Should()
            .Contain(["water in a flood test 5\"", "water in use 6\"", "bed 1-1/2\"", "nail 3-3/4\"", "nail 7-3/4\"",
            "liner's edge 8\"", "ENTRY (A)", "Back wall (C)"]);
        section.Told.Should().Contain("rough curb: 2-7/8\" above the top of the drain")
            .And.Contain("Nail, staple or screw, curb, inside face: 3-3/4\", where water stands.");
    }

    [Fact]
    public void A_changed_curb_changes_lines_labels_and_words()
    {
        var (one, other) =
            (Draw(SectionDrawing.Of, DrawnJobs.Whole),
            Draw(SectionDrawing.Of, DrawnJobs.Whole.Replace("height: 5,", "height: 6,", StringComparison.Ordinal)));
        other.Texts.Should().Contain("water in a flood test 6\"").And.NotContain("water in a flood test 5\"");
        other.Told.Should().NotBe(one.Told);
        other.Lines("thin").Should().NotBeEquivalentTo(one.Lines("thin"));
    }

    /// <summary>
    /// Three nails on the left wall, of which one lies where water stands: it has a ring; so has the one inside the
    /// curb.
    /// </summary>
    [Fact]
    public void Every_nail_stands_at_its_height_and_those_under_water_in_a_ring()
    {
        var map = Draw(NailDrawing.Of, DrawnJobs.Whole);
        map.Texts.Should()
            .Contain(["8\"", "5-1/2\"", "7-1/2\"", "7-3/4\"", "3-3/4\"", "3\"", "Left wall (B)",
            "liner's edge 13-1/4\"", "finished curb 6\""]);
        map.Root.Elements().Count(one => one.Name.LocalName == "circle").Should().Be(2);
    }

    /// <summary>Between the studs it is 61-3/4 x 36-7/8; the walls take 8 in, the curb 5, 4-1/2 and 3.</summary>
    [Fact]
    public void The_liner_is_cut_round_its_flaps()
    {
        var sheet = Draw(LinerDrawing.Of, DrawnJobs.Whole);
        sheet.Texts.Should().Contain(["6'-5 3/4\"", "4'-9 3/8\"", "Back wall (C) 8\"", "Entry (A) 12-1/2\"", "pleat", "pleat, piece"]);
        sheet.Told.Should().Contain("up the curb 5\", over it 4-1/2\", down outside 3\".");
        Draw(LinerDrawing.Of, DrawnJobs.Whole.Replace("outside: 3", "outside: 4", StringComparison.Ordinal))
            .Texts.Should().Contain("4'-10 3/8\"");
    }

    [Fact]
    public void Contours_and_the_low_place_are_drawn()
    {
        var contours = Draw(ContourDrawing.Of, DrawnJobs.Read);
        contours.Texts.Should().Contain(text => text.StartsWith("water ", StringComparison.Ordinal));
        contours.Told.Should().Contain("Water stands").And.Contain("Line at 1/4\".");
        contours.Lines("thin").Count.Should().BeGreaterThan(20);
    }

    [Fact]
    public void What_is_not_told_is_not_drawn()
    {
        foreach (var drawing in new Func<FloorReport, Walk, string,
            string?>[] { SectionDrawing.Of, NailDrawing.Of, ContourDrawing.Of, LinerDrawing.Of })
        {
            var walk = TheBook.Walk("method: liner under mortar\nunits: inches\n");
            drawing(FloorSheets.Of(walk.Job, walk.Book), walk, "en").Should().BeNull();
        }

        Draw(SectionDrawing.Of, DrawnJobs.Whole.Replace("bed: { thickness: plan 1-1/2 }", "", StringComparison.Ordinal))
            .Texts.Should().NotContain(text => text.StartsWith("bed", StringComparison.Ordinal));
    }

    private static Drawn Draw(Func<FloorReport, Walk, string, string?> drawing, string job)
    {
        var walk = TheBook.Walk(job);
        return new Drawn(drawing(FloorSheets.Of(walk.Job, walk.Book), walk, "en")!);
    }
}
