using System.Text.Json.Nodes;
using static WetCheck.Tests.Pan.FloorOfAJob;

namespace WetCheck.Tests.Mud;

/// <summary>
/// Every row of requirements O-06, 36 x 60 each: water (V-P S20), weight of a bed (V-Q S46), yields of bags (V-S S54),
/// volumes (D).
/// </summary>
public sealed class VolumesOfTheTable
{
    private const double CubicFoot = 1728;

    /// <summary>2 in = 10.38 psf; 2 in everywhere 155.7 lb and 18.7 gal; over a fall of 0.729 in 174.6 lb.</summary>
    [Theory]
    [InlineData("0.00001", 155.7, 18.7)]
    [InlineData("0.729", 174.6, null)]
    public void Water(string rim, double pounds, double? gallons)
    {
        var water = Mud("bonded membrane with curb", rim, "1-1/2")["water"]!;
        Number(water["pounds"]).Should().BeApproximately(pounds, 0.05);
        if (gallons is { } known)
        {
            (Number(water["volume"]) / 231).Should().BeApproximately(known, 0.05);
            (Number(water["pounds"]) / 15).Should().BeApproximately(10.38, 5e-4);
        }
    }

    /// <summary>1/4 in is 3 psf, 1-1/2 in 18 psf; 36 x 60 at 1-1/2 in 270 lb.</summary>
    [Theory]
    [InlineData("1/4", 3, 45)]
    [InlineData("1-1/2", 18, 270)]
    public void Weight_of_a_bed(string thick, double psf, double pounds)
    {
        var bed = Bed(thick);
        Number(bed["pounds"]![0]).Should().BeApproximately(pounds, 1e-6);
        (Number(bed["pounds"]![1]) / 15).Should().BeApproximately(psf, 1e-6);
    }

    /// <summary>1.875 cu ft: 80 lb 3.125, so 4; 60 lb 4.17, so 5.</summary>
    [Fact]
    public void Bags_of_an_even_bed()
    {
        var bed = Bed("1-1/2");
        (Number(bed["volume"]![0]) / CubicFoot).Should().BeApproximately(1.875, 1e-6);
        var bags = bed["bags"]!.AsArray()
            .ToDictionary(bag => Number(bag!["pounds"]),
            bag => (Exact: Number(bag!["exact"]![0]), Whole: Number(bag["whole"]![0])));
        bags[80].Should().Be((3.125, 4));
        bags[60].Exact.Should().BeApproximately(4.17, 5e-3);
        bags[60].Whole.Should().Be(5);
    }

    /// <summary>Level rim, point drain, 0.729 in, nothing below: 0.607 cu ft, A (t + 2h/3).</summary>
    [Theory]
    [InlineData("0", 0.6075)]
    [InlineData("1", 1.8575)]
    public void A_sloped_fill(string thick, double volume)
    {
        var way = Mud("bonded membrane with curb", "0.729", thick)["ways"]![0]!;
        (Number(way["volume"]![0]) / CubicFoot).Should().BeApproximately(volume, 6e-4);
        way["layers"]!.AsArray().Should().ContainSingle();
    }

    /// <summary>Linear drain on the long wall: A (t + h/2), over what is left beside the channel: 32 in of 36.</summary>
    [Fact]
    public void A_plane_to_a_channel()
    {
        var mud = Told(Inches
            + "method: curbless bonded\nshower:\n  size: 60 x 36 finished\n  drain at: 30, 34\ndrain: { form: "
            + "channel, grate: 4, channel length: 60, channel runs: side to side }\nbed: { thickness: 1 }\n").Json["mud"]!;
        var rim = Number(mud["rim"]);
        Number(mud["ways"]![0]!["volume"]![0]).Should().BeApproximately(60 * 32 * (1 + (rim / 2)), 1e-3);
    }

    /// <summary>80 lb 0.60, 60 lb 0.45, 40 lb 0.30 cu ft; 80 lb covers 3.6 sq ft at 2 in.</summary>
    [Fact]
    public void Yields()
    {
        var bags = Bed("2")["bags"]!.AsArray().ToDictionary(bag => Number(bag!["pounds"]), bag => Number(bag!["yield"]) / CubicFoot);
        bags.Should().Equal(new Dictionary<double, double> { [80] = 0.60, [60] = 0.45, [40] = 0.30 });
        (bags[80] * 12 / 2).Should().BeApproximately(3.6, 1e-9);
    }

    /// <summary>The even bed over a liner.</summary>
    private static JsonNode Bed(string thick) =>
        Mud("liner under mortar", "0.729", thick)["ways"]![0]!["layers"]!.AsArray()
        .Single(layer => (string)layer!["layer"]! == "bed")!;

    private static JsonNode Mud(string method, string rim, string thick) =>
        Told($"method: {method}\n" + Inches.Replace("floor: {", $"floor: {{ rim: {rim},", StringComparison.Ordinal)
            + $"bed: {{ thickness: {thick} }}\n" + Rectangle(60, 36)).Json["mud"]!;
}
