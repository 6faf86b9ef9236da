using System.Text.Json;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What old work's look accounts for, for other programs. Schema: <c>docs/schemas/tearout.schema.json</c>.</summary>
public static class TearoutJson
{
    /// <summary>Changes when a key changes its meaning or goes.</summary>
    public const string Format = "wetcheck tearout 1";

    /// <returns>One JSON object, ended by a line feed.</returns>
    public static string Of(TearoutReport report, Walk walk, string language, string when)
    {
        var says = new TearoutSays(walk, language);
        return JsonPage.Of(Format, walk, language, when, json =>
        {
            PanCaseJson.Texts(json, "gate", [.. says.Gate(report)]);
            PanCaseJson.Texts(json, "expect", [.. report.Expected.Select(one => says.Phrases.Of(one.Say))]);
            Signs(json, "seen", report.Signs, says);
            json.WriteStartArray("causes");
            foreach (var cause in report.Causes.Where(cause => cause.Fit != Fit.Unseen))
            {
                Cause(json, cause, says);
            }

            json.WriteEndArray();
            json.WriteStartArray("sets");
            foreach (var set in report.Sets)
            {
                json.WriteStartArray();
                foreach (var cause in set)
                {
                    json.WriteStringValue(cause.Cause.Number);
                }

                json.WriteEndArray();
            }

            json.WriteEndArray();
            Signs(json, "leftover", report.Leftover, says);
            json.WriteStartArray("tests");
            foreach (var test in report.Tests)
            {
                json.WriteStartObject();
                json.WriteString("number", test.Test.Number);
                json.WriteString("do", says.Phrases.Of(test.Test.Do));
                json.WriteString("result", test.Wet switch { Tri.Yes => "wet", Tri.No => "dry", _ => "not-done" });
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteString("closing", Sentence.Joined(says.Phrases["tearout.closing"], says.Phrases["close.record"]));
        });
    }

    private static void Cause(Utf8JsonWriter json, CauseSeen cause, TearoutSays says)
    {
        json.WriteStartObject();
        json.WriteString("number", cause.Cause.Number);
        json.WriteString("cause", cause.Cause.Id);
        json.WriteString("fit", WhyCause.Key(cause.Fit));
        json.WriteString("say", says.Phrases.Of(cause.Cause.Name));
        json.WriteString("how", says.Phrases.Of(cause.Cause.How));
        Signs(json, "seen", cause.Signs, says);
        PanCaseJson.Texts(json, "missing", [.. cause.Missing.Select(need => Conditions.Say(need, null, says.Telling.Walk.Book, says.Phrases))]);
        Signs(json, "against", cause.Against, says);
        json.WriteString("open_next", says.Phrases.Of(cause.Cause.Next));
        PanCaseJson.Texts(json, "guards", cause.Cause.Guards);
        PanCaseJson.Texts(json, "dangers", cause.Cause.Dangers);
        PanCaseJson.Texts(json, "sources", says.Sources(cause.Cause.Rows));
        json.WriteEndObject();
    }

    private static void Signs(Utf8JsonWriter json, string key, IReadOnlyList<Sign> signs, TearoutSays says)
    {
        json.WriteStartArray(key);
        foreach (var sign in signs)
        {
            json.WriteStartObject();
            json.WriteString("fact", sign.Fact.Id.ToString());
            json.WriteString("say", says.Sign(sign));
            json.WritePropertyName("line");
            if (sign.Fact.Counted is { } reading)
            {
                json.WriteNumberValue(reading.At.Line);
            }
            else
            {
                json.WriteNullValue();
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
