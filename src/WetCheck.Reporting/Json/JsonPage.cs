using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What every page for other programs begins with, and how it is written.</summary>
internal static class JsonPage
{
    private static readonly JsonWriterOptions s_readable = new()
    {
        Indented = true,
        NewLine = "\n",
        // Inch marks stay readable. The text is never put into a page.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <param name="format">Of the page, with its number.</param>
    /// <returns>One JSON object, ended by a line feed.</returns>
    public static string Of(string format, Walk walk, string language, string when, Action<Utf8JsonWriter> body)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, s_readable))
        {
            json.WriteStartObject();
            json.WriteString("format", format);
            json.WriteString("language", language);
            json.WriteString("when", when);
            json.WriteString("job", walk.Job.Name);
            json.WriteString("file", walk.Job.File);
            body(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.ToArray()) + "\n";
    }

    public static void Book(Utf8JsonWriter json, RuleBook book)
    {
        json.WriteStartObject("rulebook");
        json.WriteString("name", book.Name);
        json.WriteString("date", book.Date);
        json.WriteEndObject();
    }
}
