using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using WetCheck.Intake;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Intake;

/// <summary>The schema that editors complete names by.</summary>
public sealed class EditorSchema
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(JobSchema.Of(BookText.Vocabulary));

    [Fact]
    public void Every_example_holds() =>
        Repository.In("docs/examples/", ".job.yaml").Where(file => !Holds(Plain(Repository.Read(file)))).Should().BeEmpty();

    [Theory]
    [InlineData("""{ "curb": { "height": 5, "cap adds": "plan 1" } }""", true)]
    [InlineData("""{ "curb": "none", "niche": null }""", false)]
    [InlineData("""{ "curb": { "hieght": 5 } }""", false)]
    [InlineData("""{ "crub": { "height": 5 } }""", false)]
    [InlineData("""{ "liner": { "right": [ "3", { "read": "2-1/2", "tool": "laser" } ] } }""", true)]
    [InlineData("""{ "liner": { "right": { "tool": "laser" } } }""", false)]
    [InlineData("""{ "method": "something new", "plumbing code": "IRC 2021", "seams": "none" }""", true)]
    public void Names_are_known_answers_are_free(string job, bool holds) => Holds(JsonNode.Parse(job)!).Should().Be(holds);

    [Fact]
    public void Every_line_has_its_question_and_its_words()
    {
        var weeps = JsonNode.Parse(JobSchema.Of(BookText.Vocabulary))!["properties"]!["drain"]!["anyOf"]![1]!["properties"]!["weeps"]!;
        weeps["description"]!.GetValue<string>().Should().Be("Is every weep hole open?");
        weeps["examples"]!.AsArray().Select(word => word!.GetValue<string>()).Should().StartWith(["open", "blocked"]);
    }

    private static bool Holds(JsonNode job) => Schema.Evaluate(job.Deserialize<JsonElement>()).IsValid;

    /// <summary>The file's names and texts, read by the library's own reader and not by ours.</summary>
    private static JsonNode Plain(string yaml) =>
        JsonNode.Parse(new YamlDotNet.Serialization.SerializerBuilder().JsonCompatible().Build()
            .Serialize(new YamlDotNet.Serialization.DeserializerBuilder().Build().Deserialize(yaml)!))!;
}
