using WetCheck.Geometry;

namespace WetCheck.Tests.Liner;

/// <summary>Sheets, pleats and rolls against figures worked out by hand.</summary>
public sealed class LinerSheets
{
    [Theory]
    [InlineData(60, 77)]
    [InlineData(48, 65)]
    public void A_sheet_with_a_curb_in_front(double wide, double sheet) => Sheet(wide).Size.Should().Be((sheet, 56.5));

    /// <summary>At a square corner the pleat is as wide as it is high; at 120 and 135 degrees the tangents of 30 and 22.5.</summary>
    [Theory]
    [InlineData(90, 1)]
    [InlineData(120, 0.577)]
    [InlineData(135, 0.414)]
    public void A_pleat(double angle, double per)
    {
        var corner = new LinerCorner(angle, 8.5);
        corner.Covers(5).Should().BeApproximately(5 * per, 0.003);
        corner.Covers(20).Should().BeApproximately(8.5 * per, 0.005);
        corner.Thickness(0.04).Should().BeApproximately(0.12, 1e-12);
        corner.Relief(0.04).Should().BeApproximately(0.08, 1e-12);
    }

    [Fact]
    public void A_corner_that_stands_into_the_room_lacks_a_wedge()
    {
        var room = new Outline([new(0, 0), new(60, 0), new(60, 36), new(36, 36), new(36, 60), new(0, 60)]);
        var corners = new LinerSheet(room, [8.5, 8.5, 8.5, 8.5, 8.5, 8.5]).Corners.ToList();
        corners.Where(corner => corner.NeedsPatch).Should().ContainSingle().Which.Wedge.Should().BeApproximately(-90, 1e-9);
        corners.Sum(corner => corner.Wedge).Should().BeApproximately(360, 1e-9);
    }

    [Theory]
    [InlineData(60, 60, false, 0.058)]
    [InlineData(60, 72, false, 0.215)]
    [InlineData(48, 60, false, 0.058)]
    [InlineData(48, 72, true, 0.097)]
    public void From_a_roll_in_one_piece(double wide, double roll, bool turned, double waste) =>
        RollCut.Of(Sheet(wide).Size, (38.5, 30), [roll], null, 6).First(cut => cut.Turned == turned).Waste.Should()
            .BeApproximately(waste, 0.0006);

    [Fact]
    public void A_narrow_roll_needs_a_seam_clear_of_the_drain()
    {
        RollCut.Of(Sheet(60).Size, (38.5, 30), [48], null, 6).Should().BeEmpty();
        var cut = RollCut.Of(Sheet(60).Size, (38.5, 30), [48], 2, 6)[0];
        cut.Pieces.Should().Be(2);
        Math.Abs(cut.Seam!.Value - (cut.Turned ? 38.5 : 30)).Should().BeGreaterThanOrEqualTo(7);
        RollCut.Of((77, 56.5), (38.5, 28.25), [48], 2, 40).Should().BeEmpty();
    }

    private static LinerSheet Sheet(double wide) => new(Outline.Rectangle(wide, 36), [LinerSheet.OverCurb(4.5, 4.5, 3), 8.5, 8.5, 8.5]);
}
