using System.ComponentModel;
using System.ComponentModel.DataAnnotations;
using System.Reflection;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization.Metadata;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting;

/// <summary>
/// A shape of JSON as its schema. Every key must be there, none beside them; what else a value must keep to stands at
/// the shape.
/// </summary>
internal static class ShapeSchema
{
    private static readonly JsonSchemaExporterOptions s_strict = new()
    {
        TreatNullObliviousAsNonNullable = true,
        TransformSchemaNode = Stricter,
    };

    private static readonly JsonSerializerOptions s_readable = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Written(JsonTypeInfo shape, string title)
    {
        var schema = shape.GetJsonSchemaAsNode(s_strict).AsObject();
        schema.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.Insert(1, "title", title);
        return schema.ToJsonString(s_readable) + "\n";
    }

    private static JsonObject Stricter(JsonSchemaExporterContext at, JsonNode node)
    {
        var type = at.TypeInfo.Type;
        var schema = type == typeof(Tri) ? new JsonObject { ["type"] = new JsonArray("boolean", "null") } : node.AsObject();
        if (schema["properties"] is JsonObject properties)
        {
            schema["required"] = new JsonArray([.. properties.Select(pair => (JsonNode)pair.Key)]);
            schema["additionalProperties"] = false;
        }

        if (type == typeof(TwoFigures) || type == typeof(TwoEnds))
        {
            schema["minItems"] = 2;
            schema["maxItems"] = 2;
        }

        var said = at.PropertyInfo?.AttributeProvider ?? type;
        if (One<AllowedValuesAttribute>(said) is { } words)
        {
            schema.Remove("type");
            schema["enum"] = new JsonArray([.. words.Values.Select(word => (JsonNode?)(string?)word)]);
        }

        if (One<RegularExpressionAttribute>(said) is { } written)
        {
            (schema["items"]?.AsObject() ?? schema)["pattern"] = written.Pattern;
        }

        if (One<RangeAttribute>(said) is { } range)
        {
            schema["minimum"] = (int)range.Minimum;
        }

        if (One<DescriptionAttribute>(said) is { } description)
        {
            schema["description"] = description.Description;
        }

        return schema;
    }

    private static T? One<T>(ICustomAttributeProvider said) where T : Attribute =>
        said.GetCustomAttributes(typeof(T), false).Cast<T>().SingleOrDefault();
}
