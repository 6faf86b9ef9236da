using System.Text.Json;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The mortar of a floor in JSON. Inches, square and cubic inches, pounds. A pair is the least and the most that is known.</summary>
internal static class MudJson
{
    public static void Write(Utf8JsonWriter json, MudReport mud, PanSays says)
    {
        json.WriteStartObject("mud");
        PanCaseJson.Number(json, "area", mud.Area);
        PanCaseJson.Number(json, "fall", mud.Fall);
        PanCaseJson.Number(json, "rim", mud.Rim);
        json.WriteString("built", mud.Built is { } built ? MudSays.Key(built) : null);
        json.WriteStartArray("ways");
        foreach (var way in mud.Ways)
        {
            json.WriteStartObject();
            json.WriteString("as", MudSays.Key(way.As));
            json.WriteStartArray("layers");
            foreach (var layer in way.Layers)
            {
                json.WriteStartObject();
                json.WriteString("layer", layer.Key);
                json.WriteBoolean("has_fall", layer.HasFall);
                Bounds(json, "thinnest", layer.Thinnest);
                Bounds(json, "thickest", layer.Thickest);
                Amount(json, layer.Amount);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            Amount(json, way.Whole);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("water");
        PanCaseJson.Number(json, "depth", mud.Water?.Depth);
        PanCaseJson.Number(json, "volume", mud.Water?.Volume);
        PanCaseJson.Number(json, "pounds", mud.Water?.Pounds);
        json.WriteEndObject();
        PanJson.Missing(json, mud.Missing, says);
        json.WriteEndObject();
    }

    private static void Amount(Utf8JsonWriter json, MudAmount amount)
    {
        Bounds(json, "volume", amount.Volume);
        Bounds(json, "pounds", amount.Pounds);
        json.WriteStartArray("bags");
        foreach (var bag in amount.Bags)
        {
            json.WriteStartObject();
            PanCaseJson.Number(json, "pounds", bag.Bag.Pounds.Approximate);
            PanCaseJson.Number(json, "yield", bag.Bag.Yield.Approximate);
            Bounds(json, "exact", bag.Exact);
            Bounds(json, "whole", bag.Whole);
            Bounds(json, "with_waste", bag.WithWaste);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Null at an end that nothing is known of.</summary>
    private static void Bounds(Utf8JsonWriter json, string key, Interval? bounds)
    {
        json.WriteStartArray(key);
        foreach (var end in new[] { bounds?.Lo, bounds?.Hi })
        {
            if (end is { } known)
            {
                json.WriteNumberValue((decimal)Math.Round(known.Approximate, 6));
            }
            else
            {
                json.WriteNullValue();
            }
        }

        json.WriteEndArray();
    }
}
