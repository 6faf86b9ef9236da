using System.Text.Json;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The level readings of a floor in JSON. Inches; falls in inches per foot.</summary>
internal static class LevelsJson
{
    public static void Write(Utf8JsonWriter json, LevelReport levels, PanSays says)
    {
        json.WriteStartObject("levels");
        PanCaseJson.Place(json, "first_out_at", levels.FirstOut?.At);
        PanCaseJson.Number(json, "first_out", levels.FirstOut?.Height);
        json.WriteNumber("readings", levels.Readings);
        PanCaseJson.Number(json, "half_mark", levels.Half);
        PanCaseJson.Number(json, "spacing", levels.Spacing);
        PanCaseJson.Number(json, "hides", 2 * levels.Spacing);
        Each(json, "planes", levels.Planes, plane => Plane(json, plane, says));
        Each(json, "low_spots", levels.Ponds, pond => Numbers(json, pond.At, ("depth", pond.Depth), ("least", pond.Least), ("most", pond.Most), ("area", pond.Area), ("volume", pond.Volume)));
        Each(json, "flats", levels.Flats, flat => Numbers(json, flat.At, ("most", flat.Most * 12)));
        Each(json, "bumps", levels.Bumps, bump => Numbers(json, bump.At, ("shave", bump.Off), ("readings", bump.Readings)));
        Each(json, "read_again", levels.Again, again =>
        {
            PanCaseJson.Place(json, "at", again.At);
            json.WriteString("why", again.Key);
        });
        Each(json, "contours", levels.Contours, line =>
        {
            PanCaseJson.Number(json, "height", line.Height);
            PanCaseJson.Ring(json, "line", line.Line);
        });
        PanJson.Missing(json, levels.Missing, says);
        json.WriteEndObject();
    }

    private static void Plane(Utf8JsonWriter json, LevelPlane plane, PanSays says)
    {
        json.WriteString("kind", plane.Corner is null ? "plane" : "fold");
        json.WriteString("place", plane.Place.Length > 0 || plane.Corner is null ? plane.Place : says.Place(plane.Corner));
        json.WriteNumber("readings", plane.Readings);
        PanCaseJson.Number(json, "estimate", plane.Estimate * 12);
        PanCaseJson.Number(json, "least", plane.Least * 12);
        PanCaseJson.Number(json, "most", plane.Most * 12);
        PanCaseJson.Number(json, "uneven", plane.Uneven);
        Each(json, "held", plane.Held, held =>
        {
            PanCaseJson.Limits(json, held.Limits);
            json.WriteBoolean("disputed", held.Limits.Disputed);
            json.WriteString("flat", Word(held.Flat));
            json.WriteString("steep", held.Steep is { } steep ? Word(steep) : null);
        });
    }

    private static void Numbers(Utf8JsonWriter json, Spot at, params IReadOnlyList<(string Key, double Number)> numbers)
    {
        PanCaseJson.Place(json, "at", at);
        foreach (var (key, number) in numbers)
        {
            PanCaseJson.Number(json, key, number);
        }
    }

    private static void Each<T>(Utf8JsonWriter json, string key, IReadOnlyList<T> all, Action<T> write)
    {
        json.WriteStartArray(key);
        foreach (var one in all)
        {
            json.WriteStartObject();
            write(one);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static string Word(LevelVerdict verdict) => verdict switch
    {
        LevelVerdict.Ok => "ok",
        LevelVerdict.AtTheLimit => "at-the-limit",
        LevelVerdict.ReadAgain => "read-again",
        _ => "correction",
    };
}
