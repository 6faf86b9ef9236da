using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>How a page for other programs is written.</summary>
internal static class JsonPage
{
    private static readonly JsonWriterOptions s_readable = new()
    {
        Indented = true,
        NewLine = "\n",
        // Inch marks stay readable. The text is never put into a page.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <returns>One JSON object, ended by a line feed.</returns>
    public static string Write<T>(T page, JsonTypeInfo<T> shape)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, s_readable))
        {
            JsonSerializer.Serialize(json, page, shape);
        }

        return Encoding.UTF8.GetString(buffer.ToArray()) + "\n";
    }

    public static RuleBookShape Book(RuleBook book) => new() { Name = book.Name, Date = book.Date };
}
