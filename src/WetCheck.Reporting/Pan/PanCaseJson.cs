using System.Text.Json;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>One case of a floor's falls in JSON.</summary>
internal static class PanCaseJson
{
    public static void Write(Utf8JsonWriter json, PanCase one, PanSays says)
    {
        json.WriteStartObject();
        Limits(json, one.Limits);
        json.WriteString("drain", Taken(one.Taken));
        if (one.Feasible == Tri.Unknown)
        {
            json.WriteNull("feasible");
        }
        else
        {
            json.WriteBoolean("feasible", one.Feasible == Tri.Yes);
        }

        Window(json, "rim_window", one.Window);
        Number(json, "rim", one.Mark);
        Number(json, "height", one.Height);
        Walls(json, one);
        Valleys(json, one, says);
        Number(json, "steepest", one.Steepest * 12);
        Number(json, "flattest", one.Folds.Count == 0 ? null : one.Folds.Min(fold => fold.Slope) * 12);
        Ring(json, "region", one.Region);
        Place(json, "nearest", one.Nearest);
        Place(json, "part", one.Part);
        json.WriteStartArray("ends");
        foreach (var end in one.Ends)
        {
            json.WriteStartObject();
            json.WriteString("corner", end.Corner);
            Number(json, "far", end.Far);
            Number(json, "height", end.Height);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("hidden");
        foreach (var hidden in one.Hidden)
        {
            json.WriteStartObject();
            json.WriteString("side", hidden.Side);
            Place(json, "by", hidden.By);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("ways_out");
        foreach (var way in one.Ways)
        {
            json.WriteStartObject();
            json.WriteString("kind", way.Kind);
            json.WriteString("say", says.Way(way));
            Number(json, "cost", way.Cost);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    public static void Limits(Utf8JsonWriter json, PanLimits limits)
    {
        json.WriteString("measure", limits.AlongFolds ? "along-folds" : "square");
        Number(json, "least", limits.Least.Value.Approximate * 12);
        Number(json, "most", limits.Most.Value.Approximate * 12);
        Texts(json, "held", [.. limits.Held.Select(choice => choice.Key)]);
    }

    public static void Texts(Utf8JsonWriter json, string key, IReadOnlyList<string> texts)
    {
        json.WriteStartArray(key);
        foreach (var text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }

    public static void Ring(Utf8JsonWriter json, string key, IReadOnlyList<Spot> ring)
    {
        json.WriteStartArray(key);
        foreach (var at in ring)
        {
            Pair(json, at.X, at.Y);
        }

        json.WriteEndArray();
    }

    public static void Place(Utf8JsonWriter json, string key, Spot? at)
    {
        json.WritePropertyName(key);
        if (at is null)
        {
            json.WriteNullValue();
        }
        else
        {
            Pair(json, at.X, at.Y);
        }
    }

    public static string Taken(DrainTaken taken) => taken switch
    {
        DrainTaken.Point => "point",
        DrainTaken.Grate => "grate",
        DrainTaken.Channel => "channel",
        _ => "channel-at-wall",
    };

    public static void Window(Utf8JsonWriter json, string key, (double Least, double Most)? window)
    {
        json.WritePropertyName(key);
        if (window is var (least, most))
        {
            Pair(json, least, most);
        }
        else
        {
            json.WriteNullValue();
        }
    }

    private static void Walls(Utf8JsonWriter json, PanCase one)
    {
        json.WriteStartArray("walls");
        foreach (var wall in one.Walls)
        {
            json.WriteStartObject();
            json.WriteString("side", wall.Side);
            Number(json, "length", wall.Length);
            Number(json, "run", wall.Run);
            Number(json, "slope", wall.Slope * 12);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Valleys(Utf8JsonWriter json, PanCase one, PanSays says)
    {
        json.WriteStartArray("valleys");
        foreach (var fold in one.Folds)
        {
            json.WriteStartObject();
            json.WriteString("corner", fold.Corner.Length > 0 ? fold.Corner : says.Place(fold.At));
            Place(json, "at", fold.At);
            Number(json, "length", fold.Length);
            Number(json, "slope", fold.Slope * 12);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Pair(Utf8JsonWriter json, double first, double second)
    {
        json.WriteStartArray();
        json.WriteNumberValue(Rounded(first));
        json.WriteNumberValue(Rounded(second));
        json.WriteEndArray();
    }

    public static void Number(Utf8JsonWriter json, string key, double? number)
    {
        if (number is { } known && double.IsFinite(known))
        {
            json.WriteNumber(key, Rounded(known));
        }
        else
        {
            json.WriteNull(key);
        }
    }

    /// <summary>A decimal, so that 0.75 is written so on every machine.</summary>
    private static decimal Rounded(double number) => (decimal)Math.Round(number, 6);
}
