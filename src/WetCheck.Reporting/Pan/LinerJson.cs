using System.Text.Json;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The cut sheet of a liner in JSON. Inches.</summary>
internal static class LinerJson
{
    public static void Write(Utf8JsonWriter json, LinerReport liner, PanSays says)
    {
        json.WriteStartObject("liner");
        PanCaseJson.Number(json, "upturn", liner.Upturn);
        PanCaseJson.Number(json, "along", liner.Cut?.Size.Along);
        PanCaseJson.Number(json, "across", liner.Cut?.Size.Across);
        json.WriteStartArray("flaps");
        foreach (var flap in liner.Cut?.Flaps ?? [])
        {
            json.WriteStartObject();
            json.WriteString("side", flap.Side);
            PanCaseJson.Number(json, "length", flap.Length);
            PanCaseJson.Number(json, "beyond", flap.Beyond);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("corners");
        foreach (var corner in liner.Cut?.Corners ?? [])
        {
            json.WriteStartObject();
            json.WriteString("corner", corner.Corner);
            PanCaseJson.Place(json, "at", corner.At);
            PanCaseJson.Number(json, "covers", corner.Covers);
            json.WriteBoolean("patch", corner.Covers == 0 || corner.AtCurb);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("rolls");
        foreach (var roll in liner.Cut?.Rolls ?? [])
        {
            json.WriteStartObject();
            PanCaseJson.Number(json, "width", roll.Width);
            PanCaseJson.Number(json, "length", roll.Length);
            json.WriteBoolean("along_entry", roll.AlongEntry);
            PanCaseJson.Number(json, "waste", roll.Waste);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        PanJson.Missing(json, liner.Missing, says);
        json.WriteEndObject();
    }
}
