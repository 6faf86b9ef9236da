using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>
/// Writes the JSON Schema (2020-12) of job files from a vocabulary, for editors that complete names and mark unknown ones. Values are
/// texts for people, so that it offers choices and examples and refuses no form of answer: that is the reader's work.
/// </summary>
public static class JobSchema
{
    /// <summary>Questions stay readable; the text goes into a file, never into a page.</summary>
    private static readonly JsonWriterOptions s_readable = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The schema as JSON text.</summary>
    public static string Of(Vocabulary vocabulary)
    {
        var layout = new JobLayout(vocabulary);
        var lines = new JsonObject();
        foreach (var key in HeaderReader.Keys(vocabulary))
        {
            lines[key] = Header(key, vocabulary);
        }

        foreach (var section in layout.Sections)
        {
            lines[section.Name] = SectionOf(section);
        }

        return Written(new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "Job file of WetCheck",
            ["type"] = "object",
            ["properties"] = lines,
            ["additionalProperties"] = false,
            ["$defs"] = new JsonObject { ["answer"] = Answer() },
        });
    }

    private static string Written(JsonObject schema)
    {
        using var bytes = new MemoryStream();
        using (var writer = new Utf8JsonWriter(bytes, s_readable))
        {
            schema.WriteTo(writer);
        }

        return Encoding.UTF8.GetString(bytes.ToArray());
    }

    private static JsonObject Header(string key, Vocabulary vocabulary) => key switch
    {
        "method" => Offered("How the waterproofing is built.", vocabulary.Methods.Select(method => method.Name)),
        "stage" => Offered("The stop the job is at.",
            vocabulary.Methods.SelectMany(method => method.Stops).Select(stop => stop.Name).Distinct()),
        "units" => Offered("What a number without a unit is read in.", ["inches", "millimetres"]),
        "readings by" => Plain("Who, with what, when, for all readings that say nothing else: MR, tape, 2026-11-25"),
        "notes" => new JsonObject { ["description"] = "Anything else." },
        "job" => Plain("What the job is called."),
        _ => vocabulary.Disciplines.FirstOrDefault(discipline => HeaderReader.KeyOf(discipline) == key) is { } discipline
            ? Offered(discipline.Ask.En, discipline.Families.Select(family => family.Name))
            : Plain(""),
    };

    private static JsonObject SectionOf(Section section)
    {
        var lines = new JsonObject();
        foreach (var line in section.Lines)
        {
            lines[line.Name] = LineOf(line);
        }

        var ask = section.Part?.AskPresence.En is { Length: > 0 } presence ? presence : (section.Part ?? section.List)?.One.En ?? "";
        return new JsonObject
        {
            ["description"] = ask,
            ["anyOf"] = new JsonArray(
                Answered(section.Part?.Find(section.Part.Main ?? "") ?? section.List?.Find(section.List.Main ?? "")),
                new JsonObject { ["type"] = "object", ["properties"] = lines, ["additionalProperties"] = false }),
        };
    }

    private static JsonObject LineOf(Line line)
    {
        var reading = line is Line.OfReading known ? known.Reading : line.Kind.Find(line.Kind.Main ?? "");
        if (line is Line.Seen)
        {
            return Offered(line.Kind.AskWhole.En, ["all", "some"]);
        }

        var schema = Answered(reading);
        schema["description"] = reading?.Ask.En ?? line.Kind.AskPresence.En;
        return schema;
    }

    private static JsonObject Answered(ReadingKind? reading)
    {
        var schema = new JsonObject { ["$ref"] = "#/$defs/answer" };
        if (reading is not null)
        {
            schema["examples"] =
                Texts([.. reading.Choices.Select(choice => choice.Key),
                .. reading.Example.Length > 0 ? [reading.Example] : Array.Empty<string>(), "none", "hidden"]);
        }

        return schema;
    }

    /// <summary>A text, a number or nothing; several readings of one fact; or the long form.</summary>
    private static JsonObject Answer() => new()
    {
        ["anyOf"] = new JsonArray(
            new JsonObject { ["type"] = Texts(["string", "number", "boolean", "null"]) },
            new JsonObject { ["type"] = "array", ["items"] = new JsonObject { ["$ref"] = "#/$defs/answer" } },
            new JsonObject
            {
                ["type"] = "object",
                ["properties"] = new JsonObject
                {
                    ["read"] = Plain("The answer."),
                    ["tool"] = Plain("What it was measured with."),
                    ["by"] = Plain("Who measured."),
                    ["date"] = Plain("When: 2026-11-25"),
                    ["photo"] = Plain("A file's name."),
                },
                ["required"] = Texts(["read"]),
                ["additionalProperties"] = false,
            }),
    };

    private static JsonObject Offered(string description, IEnumerable<string> texts)
    {
        var schema = Plain(description);
        schema["examples"] = Texts(texts);
        return schema;
    }

    private static JsonObject Plain(string description) => new()
    {
        ["description"] = description,
        ["type"] = Texts(["string", "number", "boolean", "null"]),
    };

    private static JsonArray Texts(IEnumerable<string> texts) => new([.. texts.Select(text => (JsonNode)JsonValue.Create(text))]);
}
