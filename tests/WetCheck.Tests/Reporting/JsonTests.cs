using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using WetCheck.Model;
using WetCheck.Reporting;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Reporting;

/// <summary>
/// JSON keeps to its published schema, and the schema is no formality: a key too many, one too few, a word that is no
/// result each fail.
/// </summary>
public sealed class JsonTests
{
    private static readonly JsonSchema s_schema = JsonSchema.FromText(Repository.Read("docs/schemas/walk.schema.json"));

    [Fact]
    public void Every_walk_keeps_to_the_schema()
    {
        foreach (var (name, walk) in Walks.All)
        {
            Faults(JsonNode.Parse(JsonList.Of(walk, "en", Walks.When))!).Should().BeEmpty(name);
        }
    }

    [Fact]
    public void A_walk_of_a_file_with_unread_lines_keeps_to_the_schema()
    {
        var walk = Walks.Example("juniper") with
        {
            Problems = [new Problem("unknown-unit", new At("juniper.job.yaml", 17, 9), "5 feet 0?", "  size: 5-0", Effect.Blank)],
        };
        var json = JsonNode.Parse(JsonList.Of(walk, "en", ""))!;
        Faults(json).Should().BeEmpty();
        json["problems"]![0]!["effect"]!.GetValue<string>().Should().Be("blank");
    }

    public static TheoryData<string> Objects =>
        ["", "rulebook", "counts", "findings/0", "findings/0/members/0", "findings/0/sources/0", "looks/0",
        "cautions/0", "problems/0"];

    [Theory]
    [MemberData(nameof(Objects))]
    public void An_unknown_key_fails(string path)
    {
        var json = Whole();
        At(json, path)["surprise"] = 1;
        Faults(json).Should().NotBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Objects))]
    public void Each_key_that_is_missing_fails(string path)
    {
        foreach (var key in Depth.OneOf(3, At(Whole(), path).Select(pair => pair.Key).ToList()))
        {
            var json = Whole();
            At(json, path).Remove(key);
            Faults(json).Should().NotBeEmpty($"{path} has no {key}");
        }
    }

    [Theory]
    [InlineData("findings/0", "result", "fail")]
    [InlineData("findings/0", "severity", "high")]
    [InlineData("findings/0", "paper", "planned")]
    [InlineData("findings/0/members/0", "result", "wrong")]
    [InlineData("findings/0/sources/0", "status", "sure")]
    [InlineData("", "verdict", "good")]
    [InlineData("problems/0", "effect", "fatal")]
    public void A_word_that_is_none_of_ours_fails(string path, string key, string word)
    {
        var json = Whole();
        At(json, path)[key] = word;
        Faults(json).Should().NotBeEmpty();
    }

    [Fact]
    public void It_says_what_the_walk_found()
    {
        var walk = Walks.Example("juniper");
        var json = JsonNode.Parse(JsonList.Of(walk, "en", Walks.When))!;
        var low = json["findings"]!.AsArray().Single(finding => finding!["number"]!.GetValue<string>() == "214-D")!;
        low["rule"]!.GetValue<string>().Should().Be("liner/turn-up");
        low["result"]!.GetValue<string>().Should().Be("correction");
        low["paper"]!.GetValue<string>().Should().Be("on-paper");
        low["area"]!.GetValue<string>().Should().Be("right wall (D)");
        low["found"]!.GetValue<string>().Should().Be("2-3/8\" above the rough curb");
        low["limit"]!.GetValue<string>().Should().Be("2\" or more above the finished curb: 2-7/8\" on your tape");
        low["short"]!.GetValue<string>().Should().Be("1/2\"");
        low["at"]!.GetValue<string>().Should().StartWith("juniper.job.yaml:36:");
        low["basis"]!.GetValue<string>().Should().Be("read");
        json["findings"]!.AsArray().Count.Should().Be(walk.Entries.Count);
        json["findings"]!.AsArray().Single(finding => finding!["number"]!.GetValue<string>() == "221-A")!["members"]!.AsArray()
            .Select(member => member!["number"]!.GetValue<string>()).Should().Equal("221-A2", "221-A1");
    }

    private static JsonObject Whole()
    {
        var walk = Walks.Example("juniper") with
        {
            Problems = [new Problem("unknown-unit", new At("juniper.job.yaml", 17, 9), "5 feet 0?", "  size: 5-0", Effect.Blank)],
        };
        return JsonNode.Parse(JsonList.Of(walk, "en", Walks.When))!.AsObject();
    }

    private static JsonObject At(JsonNode json, string path) => path.Split('/', StringSplitOptions.RemoveEmptyEntries)
        .Aggregate(json, (node, step) => int.TryParse(step, out var index) ? node[index]! : node[step]!).AsObject();

    private static List<string> Faults(JsonNode json)
    {
        using var document = JsonDocument.Parse(json.ToJsonString());
        var result = s_schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        return [.. (result.Details ?? []).Append(result).Where(d => d.Errors is { Count: > 0 })
            .Select(d => $"{d.InstanceLocation} {string.Join(' ', d.Errors!.Values)}")];
    }
}
