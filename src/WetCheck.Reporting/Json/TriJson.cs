using System.Text.Json;
using System.Text.Json.Serialization;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Yes, no and unknown as true, false and null.</summary>
internal sealed class TriJson : JsonConverter<Tri>
{
    public override bool HandleNull => true;

    public override Tri Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.TokenType switch
    {
        JsonTokenType.True => Tri.Yes,
        JsonTokenType.False => Tri.No,
        _ => Tri.Unknown,
    };

    public override void Write(Utf8JsonWriter writer, Tri value, JsonSerializerOptions options)
    {
        if (value == Tri.Unknown)
        {
            writer.WriteNullValue();
        }
        else
        {
            writer.WriteBooleanValue(value == Tri.Yes);
        }
    }
}
