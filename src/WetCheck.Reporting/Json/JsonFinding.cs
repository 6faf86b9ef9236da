using System.Text.Json;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>One entry as JSON. Every key is always there; what has nothing to say is empty, what there is none of is null.</summary>
internal static class JsonFinding
{
    public static void Write(Utf8JsonWriter json, Entry entry, Telling telling)
    {
        var item = Items.Of(entry, telling);
        var evidence = Evidence.Of(entry.Worst);
        json.WriteStartObject();
        json.WriteString("number", entry.Number);
        json.WriteString("rule", entry.Rule.Id);
        json.WriteString("result", Keys.Of(entry.Result));
        json.WriteString("paper", Keys.Of(entry.Paper));
        json.WriteString("severity", Keys.Of(entry.Severity));
        json.WriteString("area", Area(entry.Worst.Part, telling.Phrases));
        json.WriteString("part", entry.Worst.Part.Id);
        json.WriteString("found", item.Found);
        json.WriteString("limit", item.Should);
        json.WriteString("short", item.Short);
        json.WriteString("say", item.What);
        json.WriteString("why", RuleText.For(entry, telling).Why);
        json.WriteString("fix", item.Do);
        json.WriteString("before", item.Before);
        json.WriteString("work_of", entry.Rule.WorkOf);
        json.WriteStartArray("also");
        foreach (var number in item.Also)
        {
            json.WriteStringValue(number);
        }

        json.WriteEndArray();
        Sources(json, Says.Of(entry.Rule, evidence.Side, telling));
        json.WriteString("at", At(evidence.Test, telling));
        json.WriteString("basis", Basis(evidence.Test));
        json.WriteStartArray("hold");
        foreach (var hold in entry.Worst.Hold)
        {
            json.WriteStringValue(Lines.Bound(hold, telling));
        }

        json.WriteEndArray();
        Members(json, entry, telling);
        json.WriteEndObject();
    }

    private static void Members(Utf8JsonWriter json, Entry entry, Telling telling)
    {
        json.WriteStartArray("members");
        foreach (var check in entry.Checks)
        {
            var test = Evidence.Of(check).Test;
            json.WriteStartObject();
            json.WriteString("number", Naming.Member(entry, check));
            json.WriteString("part", check.Part.Id);
            json.WriteString("result", Keys.Of(check.Result));
            json.WriteString("paper", Keys.Of(check.Paper));
            json.WriteString("found", test is null ? "" : Tested.Found(test, telling));
            json.WriteString("at", At(test, telling));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Sources(Utf8JsonWriter json, IReadOnlyList<Cited> cited)
    {
        json.WriteStartArray("sources");
        foreach (var source in cited)
        {
            json.WriteStartObject();
            json.WriteString("row", source.Entry.Row);
            json.WriteString("publisher", source.Entry.Publisher);
            json.WriteString("document", source.Entry.Document);
            json.WriteString("section", source.Entry.Section);
            json.WriteString("edition", source.Edition?.ToString(System.Globalization.CultureInfo.InvariantCulture));
            json.WriteString("editions", source.Entry.Editions);
            json.WriteString("status", Keys.Of(source.Entry.Status));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>"right wall (D)".</summary>
    private static string Area(Part part, Phrases phrases) => part.Place is { } place
        ? place.Letters.Length > 0 ? $"{phrases.Of(place.Say)} ({place.Letters})" : phrases.Of(place.Say)
        : Naming.Part(part, phrases);

    private static string? At(Measured? test, Telling telling) => test is null ? null : Tested.At(test, telling)?.ToString();

    private static string? Basis(Measured? test) => test switch
    {
        null => null,
        _ when Tested.IsPlanned(test) => "plan",
        { Fact: null } or { Fact.Counted: null } => "computed",
        _ => "read",
    };
}
