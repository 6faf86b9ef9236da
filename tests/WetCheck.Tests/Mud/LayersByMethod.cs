using System.Text.Json.Nodes;
using WetCheck.Flow;
using WetCheck.Reporting;
using WetCheck.Tests.Pan;
using static WetCheck.Tests.Pan.FloorOfAJob;

namespace WetCheck.Tests.Mud;

/// <summary>The fall is counted once, in the layer that makes it; what is not known is a bound or said, never a number.</summary>
public sealed class LayersByMethod
{
    private const string Thick = "bed: { thickness: 1-1/2 }\npre-slope: { made of: sloped mortar, at drain: 1 }\n";

    [Theory]
    [InlineData("liner under mortar", Thick, "pre-slope+ bed")]
    [InlineData("liner under mortar", "bed: { thickness: 1-1/2 }\npre-slope: { made of: sloped board }\n", "bed")]
    [InlineData("liner under mortar", "bed: { thickness: 1-1/2 }\npre-slope: { made of: flat floor }\n", "bed+")]
    [InlineData("bonded membrane with curb", "bed: { thickness: 1-1/2 }\n", "bed+")]
    [InlineData("curbless bonded", "bed: { thickness: 1-1/2 }\n", "bed+")]
    [InlineData("formed tray", "", "")]
    public void Which_layers(string method, string told, string layers) =>
        string.Join(' ',
            Mud(method, told)["ways"]![0]!["layers"]!.AsArray()
            .Select(layer => (string)layer!["layer"]! + (layer["has_fall"]!.GetValue<bool>() ? "+" : ""))).Should()
            .Be(layers);

    [Fact]
    public void A_bound_stays_a_bound()
    {
        var layers =
            Mud("liner under mortar",
            "bed: { thickness: over 1-1/4 }\npre-slope: { at drain: 1 }\n")["ways"]![0]!["layers"]!.AsArray();
        (Number(layers[1]!["volume"]![0]), layers[1]!["volume"]![1]).Should().Be((60 * 36 * 1.25, null));
        layers[1]!["bags"]![0]!["whole"]![1].Should().BeNull();
    }

    [Theory]
    [InlineData("method: liner under mortar\n", "bed.thickness", "pre-slope.at drain")]
    [InlineData("method: curbless bonded\n", "bed.thickness", null)]
    [InlineData("", "method", null)]
    public void What_is_not_known_is_named(string method, string line, string? also)
    {
        var missing =
            Told(method + Inches + Grate + Rectangle(48, 36)).Json["mud"]!["missing"]!.AsArray()
            .Select(one => (string)one!["line"]!);
        missing.Should().Equal(new[] { line, also }.OfType<string>());
    }

    /// <summary>As bonded membrane it is one bed: the slope's part of the mortar with the bed's thickness.</summary>
    [Fact]
    public void The_same_floor_otherwise()
    {
        var ways = Mud("liner under mortar", Thick)["ways"]!.AsArray();
        ways.Select(way => (string)way!["as"]!).Should().Equal("liner", "bonded", "tray");
        Number(ways[1]!["volume"]![0]).Should().BeApproximately(Number(ways[0]!["volume"]![0]) - (60 * 36 * 1), 1e-6);
        ways[2]!["layers"]!.AsArray().Should().BeEmpty();
    }

    public static TheoryData<string> Jobs => PanPages.Jobs;

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Sheets_fit_a_screen_and_end_as_every_list(string job)
    {
        foreach (var method in Depth.OneOf(2,
            new[] { "", "method: liner under mortar\n",
            "method: curbless bonded\nbed: { thickness: over 1-1/4 in }\ntile: { floor adds: 1/2 in }\n",
            "method: formed tray\n", "method: tub surround\n" }))
        {
            var walk = TheBook.Walk("job: Elm\n" + method + job);
            var floor = FloorSheets.Of(walk.Job, walk.Book);
            foreach (var (text, language) in new[] { "en", "es" }
                .SelectMany(language =>
                new[] { (MudText.Of(floor, walk, language, ""), language),
                (MarksText.Of(floor, walk, language, ""), language) }))
            {
                text.Split('\n').Should().OnlyContain(line => line.Length <= 78);
                text.Should().NotContain("{").And.NotMatchRegex("(?i)approved|aprobado");
                text.Replace('\n', ' ').TrimEnd().Should().EndWith(TheBook.Book.Words[language]["close.record"]);
            }
        }
    }

    private static JsonNode Mud(string method, string told) => Told($"method: {method}\n" + Inches + told + Rectangle(60, 36)).Json["mud"]!;
}
