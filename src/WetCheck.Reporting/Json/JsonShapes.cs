using System.Text.Json.Serialization;

namespace WetCheck.Reporting;

/// <summary>The pages for other programs, by their shapes. The published schemas are made from these too.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower)]
[JsonSerializable(typeof(WalkShape))]
[JsonSerializable(typeof(PanShape))]
[JsonSerializable(typeof(TearoutShape))]
internal sealed partial class JsonShapes : JsonSerializerContext;
