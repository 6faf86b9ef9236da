using WetCheck.Tests.Cli;
using static WetCheck.Tests.Pan.FloorOfAJob;

namespace WetCheck.Tests.Tile;

/// <summary>
/// The sheet of the tile: TL-09 (ANSI A108.02 4.3.7, V-Q S81), and steps computed by programs that share no code with
/// this project.
/// </summary>
public sealed class TileByCommand
{
    private const string Pan = Inches + "drain: { form: point }\n";

    /// <summary>
    /// 60 x 36, rim 0.72887: 0.028, 0.042, 0.056, 0.084 for 2, 3, 4, 6 in over all shifts; a rim of 3/4 makes them as
    /// much larger.
    /// </summary>
    [Fact]
    public void Square_tiles_wherever_their_grid_lies()
    {
        var tile = Told(Pan + Rectangle(60, 36)).Json["tile"]!;
        Number(tile["rim"]).Should().Be(0.75);
        var worst = tile["sizes"]!.AsArray()
            .ToDictionary(size => Number(size!["side"]),
            size => (Step: Number(size!["worst"]) * 0.72887 / 0.75, Allowed: (string)size["allowed"]!));
        worst[2].Step.Should().BeApproximately(0.028, 6e-4);
        worst[3].Step.Should().BeApproximately(0.042, 6e-4);
        worst[4].Step.Should().BeApproximately(0.056, 6e-4);
        worst[6].Step.Should().BeApproximately(0.084, 6e-4);
        (worst[2].Allowed, worst[3].Allowed).Should().Be(("yes", "no"));
        (Number(tile["largest_uncut"]) * 0.75 / 0.72887).Should().BeApproximately(2.25, 0.03);
    }

    /// <summary>TL-09: 1/32 in beside a joint under 1/4 in, 1/16 in beside one of 1/4 in.</summary>
    [Theory]
    [InlineData("15/64", 0.03125)]
    [InlineData("1/4", 0.0625)]
    public void The_allowance_goes_by_the_joint(string joint, double allowed) =>
        Number(Told(Pan + Rectangle(60, 36) + $"tile: {{ floor joint: {joint} }}\n").Json["tile"]!["allowed"]).Should().Be(allowed);

    [Fact]
    public void A_grid_that_is_told_is_worked_out_and_names_the_tiles_to_cut()
    {
        using var desk =
            new Desk(("elm.job.yaml",
            "job: Elm\n" + Pan + Rectangle(60, 36)
            + "tile: { floor tile: 4, floor tile long: 4, floor joint: 1/8, grid from: \"30, 18\", grid: square to the walls }\n"));
        var ran = desk.Run("pan", "elm", "--sheet", "tile");
        ran.Results.Should().Contain("Worst step 1/16\"").And.Contain("Cut along the fold: 40 tiles");
        ran.Results.Split('\n').Should().OnlyContain(line => line.Length <= 78);
        ran.Code.Should().Be(1);
    }

    [Fact]
    public void One_plane_has_no_folds_and_nothing_is_worked_out_without_a_rim()
    {
        Told(Inches + "shower: { size: 60 x 36 finished }\n").Json["tile"]!["sizes"]!.AsArray().Should().BeEmpty();
        var missing = Told(Pan + Rectangle(60, 36)).Json["tile"]!["missing"]!.AsArray().Select(one => (string)one!["line"]!);
        missing.Should().Equal("tile.floor tile", "tile.floor tile long", "tile.floor joint", "tile.grid from", "tile.grid");
    }
}
