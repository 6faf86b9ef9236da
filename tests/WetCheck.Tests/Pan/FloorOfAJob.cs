using System.Globalization;
using System.Text.Json.Nodes;
using WetCheck.Tests.Cli;

namespace WetCheck.Tests.Pan;

/// <summary>One floor, from its job file through the command to JSON.</summary>
internal static class FloorOfAJob
{
    /// <summary>All that decides the limits is said: 1/4 to 1/2 in per ft, square and along the folds.</summary>
    public const string Inches =
        "units: inches\nplumbing code: IRC 2021\naccess standard: none\nfloor: { judged: along any path, figure: inches }\n";

    public const string Metric = "units: millimetres\nplumbing code: NCC 2022\nbuilding code: NCC 2022\n";

    public const string Grate = "drain: { grate: 4-1/4, grate shape: square }\n";

    public static (int Code, JsonNode Json, string Messages) Told(string job)
    {
        using var desk = new Desk(("elm.job.yaml", "job: Elm\n" + job));
        var ran = desk.Run("pan", "elm", "--format", "json");
        return (ran.Code, JsonNode.Parse(ran.Results)!, ran.Messages);
    }

    public static string Rectangle(double width, double depth, double? x = null, double? y = null) =>
        string.Create(CultureInfo.InvariantCulture,
        $"shower:\n  size: {width} x {depth} finished\n  drain at: {x ?? width / 2}, {y ?? depth / 2}\n");

    /// <summary>The one case of a measure and a way to take the drain.</summary>
    public static JsonNode Case(JsonNode json, string measure, string drain) =>
        json["cases"]!.AsArray().Single(one => (string)one!["measure"]! == measure && (string)one["drain"]! == drain)!;

    public static double Number(JsonNode? node) => node!.GetValue<double>();

    public static double Slope(JsonNode one, string side) =>
        Number(one["walls"]!.AsArray().Single(wall => (string)wall!["side"]! == side)!["slope"]);
}
