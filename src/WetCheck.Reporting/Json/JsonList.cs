using System.Text.Json;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>A walk for other programs. Its published schema is <c>docs/schemas/walk.schema.json</c>.</summary>
public static class JsonList
{
    /// <summary>Changes when a key changes its meaning or goes.</summary>
    public const string Format = "wetcheck walk 1";

    /// <returns>One JSON object, ended by a line feed.</returns>
    public static string Of(Walk walk, string language, string when)
    {
        var telling = new Telling(walk, new Phrases(walk.Book, language));
        var list = Listing.Of(walk, language, when);
        return JsonPage.Of(Format, walk, language, when, json =>
        {
            Head(json, list, walk);
            json.WriteStartArray("findings");
            foreach (var entry in walk.Entries)
            {
                JsonFinding.Write(json, entry, telling);
            }

            json.WriteEndArray();
            json.WriteStartArray("looks");
            foreach (var look in list.Looks)
            {
                JsonLook.Write(json, look);
            }

            json.WriteEndArray();
            Said(json, "cautions", walk.Cautions, list.Cautions);
            Said(json, "notes", walk.Notes, list.Notes);
            Counts(json, list.Tally);
            Problems(json, walk.Problems);
            json.WriteString("closing", list.Closing);
        });
    }

    private static void Head(Utf8JsonWriter json, Listing list, Walk walk)
    {
        json.WriteString("method", walk.Job.Method?.Name);
        json.WriteString("stage", walk.Job.Stage);
        JsonPage.Book(json, walk.Book);
        json.WriteStartArray("codes");
        foreach (var code in list.Heading.Codes)
        {
            json.WriteStringValue(code);
        }

        json.WriteEndArray();
        json.WriteString("verdict", Keys.Of(walk.Verdict));
    }

    private static void Said(Utf8JsonWriter json, string key, IReadOnlyList<Check> checks, IReadOnlyList<Line> lines)
    {
        json.WriteStartArray(key);
        for (var i = 0; i < checks.Count; i++)
        {
            json.WriteStartObject();
            json.WriteString("number", lines[i].Number);
            json.WriteString("rule", checks[i].Rule.Id);
            json.WriteString("say", lines[i].Text);
            json.WriteString("more", lines[i].More);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Counts(Utf8JsonWriter json, Tally tally)
    {
        json.WriteStartObject("counts");
        json.WriteNumber("correction", tally.Corrections);
        json.WriteNumber("on-paper", tally.OnPaper);
        json.WriteNumber("to-check", tally.ToCheck);
        json.WriteNumber("read-again", tally.ReadAgain);
        json.WriteNumber("hidden", tally.HiddenNow);
        json.WriteNumber("later", tally.Later);
        json.WriteNumber("ok", tally.Ok);
        json.WriteNumber("not-here", tally.NotHere);
        json.WriteEndObject();
    }

    private static void Problems(Utf8JsonWriter json, IReadOnlyList<Problem> problems)
    {
        json.WriteStartArray("problems");
        foreach (var problem in problems)
        {
            json.WriteStartObject();
            json.WriteString("code", problem.Code);
            json.WriteString("at", problem.At.ToString());
            json.WriteString("say", problem.Say);
            json.WriteString("typed", problem.Typed);
            json.WriteString("effect", problem.Effect switch { Effect.Asked => "asked", Effect.Blank => "blank", _ => "stops" });
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
