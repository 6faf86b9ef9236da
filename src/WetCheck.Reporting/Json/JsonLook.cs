using System.Text.Json;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>One look as JSON.</summary>
internal static class JsonLook
{
    public static void Write(Utf8JsonWriter json, LookItem look)
    {
        json.WriteStartObject();
        json.WriteString("number", look.Number);
        json.WriteString("paper", Keys.Of(look.Look.Paper));
        Strings(json, "parts", look.Look.Parts.Select(part => part.Id));
        json.WriteString("asks", look.Look.Reading?.Name ?? look.Look.Fact.Reading);
        json.WriteString("ask", look.Ask);
        json.WriteString("known", Sentence.Joined(look.Title, look.Detail));
        json.WriteString("how", look.How);
        json.WriteString("tool", look.Look.Reading?.Tool?.Name);
        Strings(json, "settles", Numbers(look.Look.Settles));
        Strings(json, "bears", Numbers(look.Look.Bears));
        json.WriteString("at", look.Look.At.ToString());
        json.WriteEndObject();
    }

    private static IEnumerable<string> Numbers(IEnumerable<Entry> entries) => entries.Select(entry => entry.Number);

    private static void Strings(Utf8JsonWriter json, string key, IEnumerable<string> values)
    {
        json.WriteStartArray(key);
        foreach (var value in values)
        {
            json.WriteStringValue(value);
        }

        json.WriteEndArray();
    }
}
