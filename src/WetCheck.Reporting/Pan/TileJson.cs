using System.Text.Json;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The tile of a floor on its folds, in JSON. Inches and degrees.</summary>
internal static class TileJson
{
    public static void Write(Utf8JsonWriter json, TileReport tile, PanSays says)
    {
        json.WriteStartObject("tile");
        PanCaseJson.Number(json, "rim", tile.Rim);
        PanCaseJson.Number(json, "allowed", tile.Allowed);
        PanCaseJson.Number(json, "largest_uncut", tile.LargestUncut);
        json.WriteStartArray("folds");
        foreach (var fold in tile.Folds)
        {
            json.WriteStartObject();
            PanCaseJson.Place(json, "from", fold.At);
            PanCaseJson.Number(json, "angle", fold.Angle);
            PanCaseJson.Number(json, "half", fold.Half);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("sizes");
        foreach (var size in tile.Sizes)
        {
            json.WriteStartObject();
            PanCaseJson.Number(json, "side", size.Side);
            PanCaseJson.Number(json, "worst", size.Worst);
            json.WriteString("allowed", size.Allowed.ToString().ToLowerInvariant());
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Laid(json, tile.Laid);
        PanJson.Missing(json, tile.Missing, says);
        json.WriteEndObject();
    }

    private static void Laid(Utf8JsonWriter json, TileLaid? laid)
    {
        if (laid is null)
        {
            json.WriteNull("laid");
            return;
        }

        json.WriteStartObject("laid");
        PanCaseJson.Number(json, "worst", laid.Worst);
        PanCaseJson.Place(json, "at", laid.At);
        PanCaseJson.Number(json, "gap", laid.Gap);
        json.WriteNumber("count", laid.Count);
        PanCaseJson.Ring(json, "to_cut", laid.ToCut);
        PanCaseJson.Number(json, "best", laid.Best?.Step);
        json.WriteEndObject();
    }
}
