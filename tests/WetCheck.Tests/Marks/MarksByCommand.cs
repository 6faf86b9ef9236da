using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using WetCheck.Model;
using WetCheck.Tests.Cli;
using static WetCheck.Tests.Pan.FloorOfAJob;

namespace WetCheck.Tests.Marks;

/// <summary>The screed sheet as it is printed. Windows and marks: computed by programs that share no code with this project.</summary>
public sealed partial class MarksByCommand
{
    [Theory]
    [InlineData(60, 36, 0.75)]
    [InlineData(36, 36, 0.5625)]
    [InlineData(48, 36, 0.625)]
    [InlineData(60, 40, 0.8125)]
    [InlineData(54, 36, 0.6875)]
    public void The_same_mark_on_every_stud(double width, double depth, double mark)
    {
        var plan = Plan(Inches + Rectangle(width, depth));
        (plan["level"]!.GetValue<bool>(), Number(plan["rim_high"])).Should().Be((true, mark));
        plan["held"]!.AsArray().Should().OnlyContain(held => held!["kept"]!.GetValue<bool>());
        plan["ribs"]!.AsArray().Count.Should().Be(8);
    }

    /// <summary>
    /// 48 x 36, rim 5/8: the fold is 30 in and falls 1/4 in per ft exactly, so 1/4 in stands at 12 in and 1/2 in at 24
    /// in. Worked out by hand.
    /// </summary>
    [Fact]
    public void Distances_of_a_fold()
    {
        var fold = Plan(Inches + Rectangle(48, 36))["ribs"]!.AsArray().First(rib => (string)rib!["kind"]! == "corner")!;
        fold["marks"]!.ToJsonString().Should().Be("[[12,0.25],[24,0.5]]");
    }

    /// <summary>
    /// 60 x 36 to a 4-1/4 in grate along the folds: no level rim, a dip of 0.0069 in would do; on sixteenths 11/16 in
    /// the corners and 5/8 on the long walls.
    /// </summary>
    [Fact]
    public void A_rim_out_of_level_on_marks()
    {
        var plan = Plan(Inches + Grate + Rectangle(60, 36));
        (plan["level"]!.GetValue<bool>(), Number(plan["rim_low"]), Number(plan["rim_high"])).Should().Be((false, 0.625, 0.6875));
        plan["held"]!.AsArray().Should().OnlyContain(held => held!["kept"]!.GetValue<bool>());
        var rebuilt = new Rebuilt([.. plan["ribs"]!.AsArray().Select(Rib!)], Geometry.Outline.Rectangle(60, 36), new(30, 18));
        (rebuilt.Triangles.Max(one => one.Slope) * 12).Should().BeLessThanOrEqualTo(0.5);
        (rebuilt.Falls.Min() * 12).Should().BeGreaterThanOrEqualTo(0.25);
    }

    /// <summary>What a person reads is what a program reads.</summary>
    [Theory]
    [InlineData(60, 36, "")]
    [InlineData(48, 36, Grate)]
    [InlineData(52, 38, "drain: { grate: 4-1/4, grate shape: round }\n")]
    public void The_text_has_the_same_figures(double width, double depth, string drain)
    {
        using var desk = new Desk(("elm.job.yaml", "job: Elm\n" + Inches + drain + Rectangle(width, depth)));
        var text = Blanks().Replace(desk.Run("pan", "elm", "--sheet", "marks").Results, " ");
        var printed =
            Line().Matches(text)
            .Select(line =>
            string.Join(" ",
            Mark().Matches(line.Value).Select(mark => $"{Tape(mark.Groups[1].Value)}@{Tape(mark.Groups[2].Value)}")
            .Append(Tape(Wall().Match(line.Value).Groups[1].Value))));
        var told = Plan(Inches + drain + Rectangle(width, depth))["ribs"]!.AsArray().Where(rib => (string)rib!["kind"]! != "plane")
            .Select(rib =>
                string.Join(" ",
                rib!["marks"]!.AsArray().Select(mark => $"{Said(mark![1])}@{Said(mark[0])}")
                .Append(Said(rib["height"]))));
        printed.Should().Equal(told);
        text.Should().Contain("Zero is the top of the drain");
    }

    [Fact]
    public void To_a_channel_along_a_wall_it_is_one_plane()
    {
        var plan = Plan(Inches
            + "shower:\n  outline: 60 x 36\n  drain at: 30, 34\ndrain: { form: channel, grate: 4, channel length: 60, "
            + "channel runs: side to side }\n");
        ((string)plan["drain"]!, Number(plan["rim_high"]), plan["ribs"]!.AsArray().Count).Should().Be(("channel-at-wall", 0.6875, 3));
        plan["ribs"]!.AsArray().Should().OnlyContain(rib => Number(rib!["height"]) == 0.6875 && Number(rib["length"]) == 32);
        plan["held"]!.AsArray().Should().OnlyContain(held => held!["kept"]!.GetValue<bool>());
    }

    /// <summary>
    /// A rim that the job says is marked as it is, and what it breaks is said: 60 x 36, 5/8 in falls 0.214 along the
    /// folds (D).
    /// </summary>
    [Fact]
    public void A_rim_that_is_given()
    {
        var plan = Plan(Inches.Replace("floor: {", "floor: { rim: plan 5/8,", StringComparison.Ordinal) + Rectangle(60, 36));
        (plan["given_rim"]!.GetValue<bool>(), Number(plan["rim_high"])).Should().Be((true, 0.625));
        plan["held"]!.AsArray().Select(held => ((string)held!["measure"]!, held["kept"]!.GetValue<bool>())).Should()
            .BeEquivalentTo([("square", true), ("along-folds", false)]);
        (Number(plan["flattest"])).Should().BeApproximately(0.2144, 1e-3);
    }

    /// <summary>
    /// 60 x 36 to a grate: 5/8 in square to the walls (0.581 to 0.661), none along the folds. Said, and answered, it
    /// changes.
    /// </summary>
    [Fact]
    public void What_only_some_ask_is_a_question()
    {
        var marks = Told(Inches.Replace("judged: along any path, ", "", StringComparison.Ordinal)
            + "method: formed tray\n" + Grate + Rectangle(60, 36)).Json["marks"]!;
        marks["missing"]!.AsArray().Select(one => (string)one!["line"]!).Should().Equal("floor.judged");
        (marks["plan"]!["level"]!.GetValue<bool>(), Number(marks["plan"]!["rim_high"])).Should().Be((true, 0.625));
        marks["plan"]!["held"]!.AsArray().Select(held => held!["kept"]!.GetValue<bool>()).Should().Equal(true, false);
    }

    /// <summary>
    /// 60 x 36, rim 3/4: the long walls fall 0.500 exactly, so no rounded mark on a fold (11-2/3 in) can stand beside
    /// them.
    /// </summary>
    [Fact]
    public void Marks_that_would_break_a_limit_are_left_out()
    {
        var plan = Plan(Inches + Rectangle(60, 36));
        plan["dropped"]!.GetValue<int>().Should().Be(8);
        plan["ribs"]!.AsArray().Where(rib => (string)rib!["kind"]! == "corner").Should()
            .OnlyContain(rib => rib!["marks"]!.AsArray().Count == 0);
        plan["ribs"]!.AsArray().Single(rib => (string)rib!["name"]! == "back")!["marks"]!.ToJsonString().Should().Be("[[6,0.25],[12,0.5]]");
    }

    /// <summary>Tile and mortar 1/2 in, bed 1-1/2 in: 3/4 in less each. Worked out by hand.</summary>
    [Fact]
    public void The_same_fall_below()
    {
        var plan = Plan(Inches
            + "method: liner under mortar\nbed: { thickness: plan 1-1/2 }\ntile: { floor adds: plan 1/2 }\n"
            + Rectangle(60, 36));
        plan["below"]!.AsArray().Select(layer => ((string)layer!["layer"]!, Number(layer["down"]))).Should()
            .Equal(("bed", 0.5), ("pre-slope", 2));
    }

    [Theory]
    [InlineData("shower:\n  outline: 60 x 60 less 36 x 36 at right-back\n  drain at: 48, 12\n", "not-seen", 1)]
    [InlineData("shower:\n  size: 60 x 24 finished\n  drain at: 6, 12\n", "no-mark", 1)]
    [InlineData("shower:\n  outline: 60 x 36\n  drain at: 30, 34\ndrain: { form: channel, grate: 4, channel length: "
        + "40, channel runs: side to side }\n", "short-channel", 1)]
    [InlineData("shower: { size: 60 x 36 finished }\n", "", 3)]
    public void Without_marks_it_says_why(string shower, string why, int code)
    {
        using var desk = new Desk(("elm.job.yaml", "job: Elm\n" + Inches + shower));
        var ran = desk.Run("pan", "elm", "--sheet", "marks");
        ran.Code.Should().Be(code);
        var marks = Told(Inches + shower).Json["marks"]!;
        ((string)marks["why"]!, marks["plan"]).Should().Be((why, null));
        ran.Results.Should().NotContain("RIBS").And.Contain(why.Length == 0 ? "NOT KNOWN YET" : "No marks:");
    }

    private static JsonNode Plan(string job) => Told(job).Json["marks"]!["plan"]!;

    private static MarkRib Rib(JsonNode rib) =>
        new((string)rib["kind"]!, "", At(rib["from"]!), At(rib["to"]!), Number(rib["length"]), Number(rib["height"]),
        [.. rib["marks"]!.AsArray().Select(mark => (Number(mark![0]), Number(mark[1])))]);

    private static Spot At(JsonNode pair) => new(Number(pair[0]), Number(pair[1]));

    private static string Said(JsonNode? node) => Number(node).ToString(CultureInfo.InvariantCulture);

    private static string Tape(string printed)
    {
        var parts = printed.TrimEnd('"').Split('-', '/').Select(int.Parse).ToArray();
        return (parts.Length switch
        {
            1 => parts[0],
            2 => (double)parts[0] / parts[1],
            _ => parts[0] + ((double)parts[1] / parts[2])
        }).ToString(CultureInfo.InvariantCulture);
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    [GeneratedRegex("long: [^.]*wall [^.]*\\.")]
    private static partial Regex Line();

    [GeneratedRegex("([0-9/-]+\") at ([0-9/-]+\")")]
    private static partial Regex Mark();

    [GeneratedRegex("wall ([0-9/-]+\")\\.")]
    private static partial Regex Wall();
}
