using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>One answer that was kept beside a job file.</summary>
/// <param name="At">Where the answer as typed stands.</param>
/// <param name="Time">RFC 3339, with its offset.</param>
/// <param name="Path">The line of the job file that it answers: <c>liner.back</c>; one member of a list: <c>nails.left 2</c>.</param>
/// <param name="Read">As it would be typed on that line.</param>
/// <param name="Replaces">The time or the place of the reading that it puts out of count; what else stood before it on
/// this fact goes too.</param>
/// <param name="Line">The whole line, for messages.</param>
public sealed record LoggedAnswer(
    At At, string Time, string Path, string Read, string? By = null, string? Tool = null, string? Replaces = null, string Line = "")
{
    /// <summary>The time it counts from, where its own is before that of the line above it: <see cref="LogClock"/>.</summary>
    public string? Counts { get; init; }

    /// <summary>Signs of inches and fractions stay as they were typed.</summary>
    private static readonly JsonWriterOptions s_plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The line of the log, without its end.</summary>
    public string ToJson()
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, s_plain))
        {
            json.WriteStartObject();
            json.WriteString("at", Time);
            json.WriteString("path", Path);
            json.WriteString("read", Read);
            Given(json, "by", By);
            Given(json, "tool", Tool);
            Given(json, "replaces", Replaces);
            json.WriteEndObject();
        }

        var line = Encoding.UTF8.GetString(bytes.ToArray());
        return string.Concat(line.Select((c, at) => Escaped(c, IsOfUnseenPair(line, at))));
    }

    private static bool IsOfUnseenPair(string line, int at) => char.IsSurrogate(line[at])
        && ((at + 1 < line.Length && VisibleText.IsUnseenPair(line[at], line[at + 1]))
            || (at > 0 && VisibleText.IsUnseenPair(line[at - 1], line[at])));

    /// <summary>
    /// What can't be seen is kept by its number. So is the sign for bytes that are no text, which in a line as it
    /// stands tells that it was torn.
    /// </summary>
    private static string Escaped(char c, bool isOfUnseenPair) =>
        isOfUnseenPair || VisibleText.IsUnseen(c) || c == VisibleText.Mark ? $"\\u{(int)c:x4}" : c.ToString();

    private static void Given(Utf8JsonWriter json, string key, string? text)
    {
        if (text is not null)
        {
            json.WriteString(key, text);
        }
    }
}
