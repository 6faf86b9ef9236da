using System.Text.Json;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The heights of a floor in JSON. Inches above the datum named.</summary>
internal static class HeightsJson
{
    public static void Write(Utf8JsonWriter json, HeightReport heights, PanSays says)
    {
        json.WriteStartObject("heights");
        json.WriteStartArray("lines");
        foreach (var line in heights.Lines)
        {
            json.WriteStartObject();
            json.WriteString("group", line.Group.ToString().ToLowerInvariant());
            json.WriteString("key", line.Key);
            json.WriteString("place", line.Place);
            json.WriteString("above", line.Datum);
            Told(json, line.Height);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("asked");
        foreach (var asked in heights.Asked)
        {
            json.WriteStartObject();
            json.WriteString("key", asked.Key);
            json.WriteString("above", asked.Datum);
            Told(json, asked.Least);
            PanCaseJson.Texts(json, "codes", asked.Codes);
            json.WriteString("say", new HeightSays(says).Asked(asked));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("water");
        foreach (var stand in heights.Water)
        {
            Stand(json, stand);
        }

        json.WriteEndArray();
        PanJson.Missing(json, heights.Missing, says);
        json.WriteEndObject();
    }

    private static void Stand(Utf8JsonWriter json, WaterStand stand)
    {
        json.WriteStartObject();
        json.WriteString("layer", stand.Layer);
        json.WriteBoolean("in_use", stand.InUse);
        json.WriteString("at_the_entry", stand.AtTheEntry.ToString().ToLowerInvariant());
        json.WriteString("above", stand.Datum);
        Ways(json, "ways", stand.Ways);
        Ways(json, "open", stand.Open);
        PanCaseJson.Texts(json, "unseen", stand.Unseen);
        json.WriteEndObject();
    }

    private static void Ways(Utf8JsonWriter json, string key, IReadOnlyList<WaterWay> ways)
    {
        json.WriteStartArray(key);
        foreach (var way in ways)
        {
            json.WriteStartObject();
            json.WriteString("key", way.Key);
            json.WriteString("place", way.Place);
            Told(json, way.Height);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>One number as read, or the bounds that are known of it.</summary>
    private static void Told(Utf8JsonWriter json, HeightTold told)
    {
        var read = told.Is.AsRead;
        PanCaseJson.Number(json, "height", read.IsPoint ? read.Lo!.Value.Approximate : null);
        PanCaseJson.Number(json, "least", read.Lo?.Approximate);
        PanCaseJson.Number(json, "most", read.Hi?.Approximate);
        json.WriteBoolean("planned", told.IsPlanned);
        json.WriteBoolean("read_again", told.IsApart);
    }
}
