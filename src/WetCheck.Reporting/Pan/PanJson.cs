using System.Text.Json;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The sheets of a floor for other programs. Lengths in inches, falls in inches per foot. Schema: <c>docs/schemas/pan.schema.json</c>.</summary>
public static class PanJson
{
    /// <summary>Changes when a key changes its meaning or goes.</summary>
    public const string Format = "wetcheck pan 1";

    /// <returns>One JSON object, ended by a line feed.</returns>
    public static string Of(FloorReport floor, Walk walk, string language, string when)
    {
        var pan = floor.Falls;
        var says = new PanSays(new Phrases(walk.Book, language), walk.Book, walk.Job.Metric == true);
        return JsonPage.Of(Format, walk, language, when, json =>
        {
            JsonPage.Book(json, walk.Book);
            PanCaseJson.Ring(json, "outline", pan.Outline);
            Sides(json, pan);
            PanCaseJson.Place(json, "circle_at", pan.Circle?.Middle);
            PanCaseJson.Number(json, "circle", pan.Circle?.Across);
            PanCaseJson.Place(json, "drain", pan.Drain);
            PanCaseJson.Place(json, "second_drain", pan.Second);
            PanCaseJson.Ring(json, "ridge", pan.Ridge is var (from, to) ? [from, to] : []);
            Missing(json, pan.Missing, says);
            Limits(json, pan, says);
            PanCaseJson.Texts(json, "without_limits", pan.WithoutLimits);
            json.WriteStartArray("cases");
            foreach (var one in pan.Cases)
            {
                PanCaseJson.Write(json, one, says);
            }

            json.WriteEndArray();
            HeightsJson.Write(json, floor.Heights, says);
            MudJson.Write(json, floor.Mud, says);
            MarksJson.Write(json, floor.Marks, says);
            LevelsJson.Write(json, floor.Levels, says);
            TileJson.Write(json, floor.Tile, says);
            LinerJson.Write(json, floor.Liner, says);
            json.WriteString("closing", says.Phrases["close.record"]);
        });
    }

    private static void Sides(Utf8JsonWriter json, PanReport pan)
    {
        json.WriteStartArray("walls");
        foreach (var side in pan.Sides)
        {
            json.WriteStartObject();
            json.WriteString("side", side.Name);
            PanCaseJson.Number(json, "length", side.Length);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    internal static void Missing(Utf8JsonWriter json, IReadOnlyList<PanMissing> all, PanSays says)
    {
        json.WriteStartArray("missing");
        foreach (var missing in all)
        {
            json.WriteStartObject();
            json.WriteString("kind", missing.Key);
            json.WriteString("line", missing.Line);
            json.WriteString("write", missing.Write);
            json.WriteString("say", says.Missing(missing));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Limits(Utf8JsonWriter json, PanReport pan, PanSays says)
    {
        json.WriteStartArray("limits");
        foreach (var limits in pan.Limits)
        {
            json.WriteStartObject();
            PanCaseJson.Limits(json, limits);
            json.WriteBoolean("disputed", limits.Disputed);
            PanCaseJson.Texts(json, "codes", limits.Codes);
            json.WriteString("say", says.Limits(limits));
            PanCaseJson.Texts(json, "sources", says.Sources(limits));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
