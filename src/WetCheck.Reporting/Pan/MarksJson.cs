using System.Text.Json;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The screed sheet in JSON. Inches above the top of the drain; falls in inches per foot.</summary>
internal static class MarksJson
{
    public static void Write(Utf8JsonWriter json, MarkReport marks, PanSays says)
    {
        json.WriteStartObject("marks");
        json.WriteString("why", marks.Why);
        PanCaseJson.Window(json, "window", marks.Window);
        json.WritePropertyName("plan");
        if (marks.Plan is { } plan)
        {
            Plan(json, plan);
        }
        else
        {
            json.WriteNullValue();
        }

        PanJson.Missing(json, marks.Missing, says);
        json.WriteEndObject();
    }

    private static void Plan(Utf8JsonWriter json, MarkPlan plan)
    {
        json.WriteStartObject();
        json.WriteString("drain", PanCaseJson.Taken(plan.Taken));
        json.WriteBoolean("given_rim", plan.GivenRim);
        json.WriteBoolean("on_tape", plan.OnTape);
        json.WriteBoolean("level", plan.IsLevel);
        PanCaseJson.Number(json, "rim_low", plan.Lowest);
        PanCaseJson.Number(json, "rim_high", plan.Highest);
        json.WriteStartArray("ribs");
        foreach (var rib in plan.Ribs)
        {
            json.WriteStartObject();
            json.WriteString("kind", rib.Kind);
            json.WriteString("name", rib.Name);
            PanCaseJson.Place(json, "from", rib.From);
            PanCaseJson.Place(json, "to", rib.To);
            PanCaseJson.Number(json, "length", rib.Length);
            PanCaseJson.Number(json, "height", rib.Height);
            PanCaseJson.Ring(json, "marks", [.. rib.Marks.Select(mark => new Spot(mark.Far, mark.Height))]);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        PanCaseJson.Number(json, "steepest", plan.Steepest * 12);
        PanCaseJson.Number(json, "flattest", plan.Flattest * 12);
        json.WriteNumber("dropped", plan.Dropped);
        json.WriteStartArray("held");
        foreach (var held in plan.Held)
        {
            json.WriteStartObject();
            PanCaseJson.Limits(json, held.Limits);
            json.WriteBoolean("kept", held.Kept);
            json.WriteBoolean("tight", held.Tight);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("below");
        foreach (var layer in plan.Below)
        {
            json.WriteStartObject();
            json.WriteString("layer", layer.Layer);
            PanCaseJson.Number(json, "down", layer.Down);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
