using System.Text.Json.Nodes;
using static WetCheck.Tests.Pan.FloorOfAJob;

namespace WetCheck.Tests.Heights;

/// <summary>The sheet of heights, each figure worked out by hand from the lines of an invented job.</summary>
public sealed class HeightsOfAJob
{
    private const string Liner = "method: liner under mortar\n" + Inches;
    private const string Whole = Liner
        + "shower:\n  size: 60 x 36 finished\n  drain at: 30, 18\n  room floor: 1/2\n"
        + "liner falls: { left: 3/4 over 30, back: 3/8 over 18 }\n"
        + "drain: { top: 1-3/4, above substrate: 3 }\n"
        + "curb: { height: 5, cap adds: plan 1 }\n"
        + "liner: { left: 3-1/4, back: 3, right: 2-1/2 }\n"
        + "nails:\n  seen: all\n  left: 3 above\nseams: none\n"
        + "ledges: { niche: 0 over 4, bench: none }\n";

    [Fact]
    public void Each_layer_stands_so_high()
    {
        var heights = Told(Whole).Json["heights"]!;
        Line(heights, "substrate").Should().Be((-3, "top of drain", false));
        Line(heights, "liner").Should().Be((-1.75, "top of drain", false));
        Line(heights, "liner", "left").Should().Be((0.75, "liner at drain", false));
        Line(heights, "liner", "back").Should().Be((0.375, "liner at drain", false));
        Line(heights, "rough-curb").Should().Be((3.25, "top of drain", false));
        Line(heights, "finished-curb").Should().Be((4.25, "top of drain", true));
        Line(heights, "room-floor").Should().Be((0.5, "top of drain", false));
        Line(heights, "step-outside").Should().Be((3.75, null, true));

        // 60 x 36, drain in the middle: the mark to make is 3/4.
        Line(heights, "floor", "entry").Should().Be((0.75, "top of drain", true));
        Line(heights, "step-inside").Should().Be((3.5, null, true));
        heights["missing"]!.AsArray().Should().BeEmpty();
    }

    [Fact]
    public void A_rim_that_was_read_counts_before_the_mark_to_make()
    {
        var heights = Told(Whole.Replace("floor: {", "floor: { rim: 5/8,", StringComparison.Ordinal)).Json["heights"]!;
        Line(heights, "floor", "left").Should().Be((0.625, "top of drain", false));

        // CB-19 (V-P S177): a threshold is read from the room floor and from the shower floor, so both stand there.
        (Line(heights, "step-inside").Height, Line(heights, "step-outside").Height).Should().Be((3.625, 3.75));
    }

    /// <summary>LN-01 (V-S S14): 2 in above the finished threshold; CB-14 (from memory): no nail lower than 1 in above it.</summary>
    [Fact]
    public void What_is_asked_is_told_from_the_rough_curb()
    {
        var asked = Told(Whole).Json["heights"]!["asked"]!.AsArray();
        asked.Select(one => ((string)one!["key"]!, Number(one["height"]), (string)one["above"]!)).Should().BeEquivalentTo(
            [("turn-up", 3.0, "rough curb"), ("nail-water", 1.0, "rough curb"), ("nail", 2.0, "rough curb")]);
    }

    [Fact]
    public void Water_leaves_over_the_curb_first_and_over_the_lowest_edge_second()
    {
        var test = Water(Told(Whole).Json, "liner", inUse: false);
        Ways(test).Take(2).Should().Equal(("curb", "entry", 5), ("edge", "right", 7.5));
        ((string)test["at_the_entry"]!).Should().Be("yes");
        Ways(Water(Told(Whole).Json, "liner", inUse: true))[0].Should().Be(("curb", "entry", 6));
    }

    [Theory]
    [InlineData("nails:\n  seen: all\n  curb inside: 1-1/4 below\n", "nail", "curb inside", 3.75, "no")]
    [InlineData("nails:\n  seen: all\n  curb outside: 1-1/4 below\n", "curb", "entry", 5, "yes")]
    [InlineData("nails:\n  left: 3 above\n", "curb", "entry", 5, "unknown")]
    public void A_nail_below_the_curb_leaks_before_the_entry_shows_it(string nails, string way, string place,
        double height, string atTheEntry)
    {
        var job = Whole.Replace("nails:\n  seen: all\n  left: 3 above\n", nails, StringComparison.Ordinal);
        var test = Water(Told(job).Json, "liner", inUse: false);
        (Ways(test)[0], (string)test["at_the_entry"]!).Should().Be(((way, place, height), atTheEntry));
    }

    /// <summary>Nobody knows how far down a cut goes, so it is named and the entry is not sure.</summary>
    [Fact]
    public void A_cut_corner_is_open()
    {
        var test = Water(Told(Whole.Replace("liner: { left: 3-1/4,",
            "liner:\n  corners: left-back cut, rest folded\n  left: 3-1/4\n", StringComparison.Ordinal)
            .Replace("\n back: 3, right: 2-1/2 }", "\n  back: 3\n  right: 2-1/2", StringComparison.Ordinal)).Json, "liner", inUse: false);
        test["open"]!.AsArray().Select(way => ((string)way!["key"]!, (string)way["place"]!, Number(way["least"])))
            .Should().Equal(("cut", "left-back", 0));
        ((string)test["at_the_entry"]!).Should().Be("unknown");
    }

    /// <summary>The rule asks 1/4 to 1/2 in per ft of a ledge: over 4 in that is 1/12 to 1/6 in.</summary>
    [Fact]
    public void A_niche_is_to_fall_so_much()
    {
        var niche = Lines(Told(Whole).Json["heights"]!).Single(line => (string)line["key"]! == "ledge");
        (Number(niche["least"]), Number(niche["most"])).Should().Be((0.083333, 0.166667));
    }

    /// <summary>Each line of the job that is added may only narrow what is told of a height.</summary>
    [Fact]
    public void Bounds_only_shrink_as_facts_arrive()
    {
        string[] facts =
            ["curb: { height: 5 }\n", "drain: { top: 1-3/4 }\n", "tile: { floor tile: 2 }\n",
            "shower:\n  size: 60 x 36 finished\n  drain at: 30, 18\n",
            "floor corners: { left jamb: 3/4, right jamb: 3/4 }\n"];
        foreach (var order in Enumerable.Range(0, facts.Length).Select(first => facts.Skip(first).Concat(facts.Take(first)).ToList()))
        {
            var before = Bounds(Liner);
            for (var count = 1; count <= order.Count; count++)
            {
                var after = Bounds(Liner + string.Concat(order.Take(count)));
                foreach (var (line, (least, most)) in after.Where(line => before.ContainsKey(line.Key)))
                {
                    (least >= before[line].Least && most <= before[line].Most).Should().BeTrue(line);
                }

                before = after;
            }
        }
    }

    private static Dictionary<string, (double Least, double Most)> Bounds(string job) => Lines(Told(job).Json["heights"]!)
        .Where(line => (string?)line["above"] == "top of drain" && !line["planned"]!.GetValue<bool>())
        .ToDictionary(line => $"{line["key"]} {line["place"]}",
            line => (line["least"] is null ? double.NegativeInfinity : Number(line["least"]),
            line["most"] is null ? double.PositiveInfinity : Number(line["most"])));

    private static IEnumerable<JsonNode> Lines(JsonNode heights) => heights["lines"]!.AsArray().Select(line => line!);

    private static (double Height, string? Above, bool Planned) Line(JsonNode heights, string key, string place = "")
    {
        var line = Lines(heights).Single(one => (string)one["key"]! == key && (string)one["place"]! == place);
        return (Number(line["height"]), (string?)line["above"], line["planned"]!.GetValue<bool>());
    }

    private static JsonNode Water(JsonNode json, string layer, bool inUse) =>
        json["heights"]!["water"]!.AsArray().Single(one => (string)one!["layer"]! == layer && one["in_use"]!.GetValue<bool>() == inUse)!;

    private static List<(string Key, string Place, double Height)> Ways(JsonNode stand) =>
        [.. stand["ways"]!.AsArray().Select(way => ((string)way!["key"]!, (string)way["place"]!, Number(way["height"])))];
}
