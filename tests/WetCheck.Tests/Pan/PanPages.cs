using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using WetCheck.Tests.Cli;
using WetCheck.Tests.Conventions;
using static WetCheck.Tests.Pan.FloorOfAJob;

namespace WetCheck.Tests.Pan;

/// <summary>What the command writes: JSON by its published schema; text that fits a screen, in two languages, with the same end.</summary>
public sealed class PanPages
{
    private static readonly JsonSchema s_schema = JsonSchema.FromText(Repository.Read("docs/schemas/pan.schema.json"));

    public static TheoryData<string> Jobs =>
    [
        "", "units: inches\n", Inches + Grate + Rectangle(60, 30), Inches + Grate + Rectangle(60, 36), Metric
            + Rectangle(1800, 900), Inches + Rectangle(48, 36, 12, 18),
        "units: inches\nshower:\n  outline: 60 x 60 less 24 x 24 at right-back\n  drain at: 48, 12\n",
        Inches + "shower:\n  outline: 38 x 38 clipped 18 x 18 at right-back\n  drain at: 17, 17\ndrain: { grate: "
            + "4-1/4, grate shape: round }\n",
        Inches + "shower:\n  outline: 60 x 36\n  drain at: 30, 34\ndrain: { form: channel, grate: 4, channel length: "
            + "60, channel runs: side to side }\n",
    ];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Json_keeps_to_its_schema(string job)
    {
        var json = Told(job).Json;
        Faults(json).Should().BeEmpty();
        json["surprise"] = 1;
        Faults(json).Should().NotBeEmpty();
    }

    [Fact]
    public void A_key_that_is_missing_fails()
    {
        var text = Told(Inches + Grate + Rectangle(60, 30)).Json.ToJsonString();
        foreach (var key in JsonNode.Parse(text)!["cases"]![0]!.AsObject().Select(pair => pair.Key).ToList())
        {
            var json = JsonNode.Parse(text)!;
            json["cases"]![0]!.AsObject().Remove(key);
            Faults(json).Should().NotBeEmpty(key);
        }
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Text_fits_a_screen_and_ends_as_every_list(string job)
    {
        foreach (var language in new[] { "en", "es" })
        {
            using var desk = new Desk(("elm.job.yaml", "job: Elm\n" + job));
            var text = desk.Run("pan", "elm", "--lang", language).Results;
            text.Split('\n').Should().OnlyContain(line => line.Length <= 78);
            text.Should().NotContain("{").And.NotMatchRegex("(?i)approved|aprobado");
            text.Replace('\n', ' ').TrimEnd().Should().EndWith(TheBook.Book.Words[language]["close.record"]);
        }
    }

    private static List<string> Faults(JsonNode json)
    {
        using var document = JsonDocument.Parse(json.ToJsonString());
        var result = s_schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        return [.. (result.Details ?? []).Append(result).Where(d => d.Errors is { Count: > 0 })
            .Select(d => $"{d.InstanceLocation} {string.Join(' ', d.Errors!.Values)}")];
    }
}
