using WetCheck.Tests.Cli;
using static WetCheck.Tests.Pan.FloorOfAJob;

namespace WetCheck.Tests.Liner;

/// <summary>
/// The cut sheet from a job. Worked out by hand: 60 x 36 between the studs, curb 4-1/2 high and wide, 3 in down
/// outside, liner 4 in above the rough curb.
/// </summary>
public sealed class LinerByCommand
{
    /// <summary>
    /// IRC from 2009 on asks 2 in above the finished curb (LN-01); a cap of 2 in makes 4 in above the rough one, 8-1/2
    /// in from the floor.
    /// </summary>
    private const string Job =
        "method: liner under mortar\nunits: inches\nplumbing code: IRC 2021\n"
        + "shower:\n  size: 58-1/4 x 35-1/8 finished\n  drain at: 29, 17\n"
        + "walls: { adds: 7/8 }\ncurb: { height: 4-1/2, cap adds: plan 2, rough width: 4-1/2 }\nliner: { outside: plan 3 }\n";

    [Fact]
    public void One_piece_and_its_flaps()
    {
        var liner = Told(Job).Json["liner"]!;
        (Number(liner["upturn"]), Number(liner["along"]), Number(liner["across"])).Should().Be((8.5, 77, 56.5));
        liner["flaps"]!.AsArray()
            .Select(flap => ((string)flap!["side"]!, Number(flap["length"]), Number(flap["beyond"]))).Should()
            .Equal(("entry", 60, 12), ("left", 36, 8.5), ("back", 60, 8.5), ("right", 36, 8.5));
        liner["rolls"]!.AsArray().Select(roll => (Number(roll!["width"]), Math.Round(Number(roll["waste"]), 3)))
            .Should().Equal((60, 0.058), (72, 0.215));
        liner["missing"]!.AsArray().Should().BeEmpty();
    }

    /// <summary>LN-18: the liner is not cut at an inside corner; at the curb it has to be, and a piece closes it.</summary>
    [Fact]
    public void Inside_corners_are_pleated_and_the_curbs_get_a_piece()
    {
        var corners =
            Told(Job).Json["liner"]!["corners"]!.AsArray()
            .ToDictionary(corner => (string)corner!["corner"]!,
            corner => (Number(corner!["covers"]), corner["patch"]!.GetValue<bool>()));
        corners["left-back"].Should().Be((8.5, false));
        corners["left jamb"].Should().Be((4.5, true));
    }

    [Fact]
    public void Each_line_that_is_missing_is_named_and_nothing_is_guessed()
    {
        var liner = Told("method: liner under mortar\nunits: inches\nplumbing code: IRC 2021\nshower: { size: 60 x 36 "
            + "finished }\n").Json["liner"]!;
        liner["along"].Should().BeNull();
        liner["missing"]!.AsArray().Select(one => (string)one!["line"]!).Should()
            .Equal("curb.height", "curb.rough width", "liner.outside", "walls.adds");
    }

    [Theory]
    [InlineData("en", "One piece 77\" along the entry, 56-1/2\" square to it.")]
    [InlineData("es", "Una pieza de 77\" a lo largo de la entrada y 56-1/2\" a escuadra.")]
    public void It_fits_a_screen(string language, string said)
    {
        using var desk = new Desk(("elm.job.yaml", "job: Elm\n" + Job));
        var text = desk.Run("pan", "elm", "--sheet", "liner", "--lang", language).Results;
        text.Should().Contain(said).And.NotContain("{");
        text.Split('\n').Should().OnlyContain(line => line.Length <= 78);
    }

    [Fact]
    public void A_membrane_bonded_to_the_bed_has_no_such_sheet() =>
        Told(Job.Replace("liner under mortar", "bonded membrane with curb", StringComparison.Ordinal)
            .Replace("liner: { outside: plan 3 }\n", "", StringComparison.Ordinal)).Json["liner"]!["missing"]!.AsArray()
            .Should().BeEmpty();
}
