using System.ComponentModel;
using System.ComponentModel.DataAnnotations;

namespace WetCheck.Reporting;

internal sealed record MudShape
{
    public required decimal? Area { get; init; }
    public required decimal? Fall { get; init; }
    public required decimal? Rim { get; init; }
    [AllowedValues("liner", "bonded", "tray", null)] public required string? Built { get; init; }
    [Description("As it is built first, then the others.")] public required IReadOnlyList<MudWayShape> Ways { get; init; }
    public required MudWaterShape Water { get; init; }
    [Description(MissingShape.All)] public required IReadOnlyList<MissingShape> Missing { get; init; }
}

internal sealed record MudWayShape
{
    [AllowedValues("liner", "bonded", "tray")] public required string As { get; init; }
    public required IReadOnlyList<MudLayerShape> Layers { get; init; }
    public required TwoEnds Volume { get; init; }
    public required TwoEnds Pounds { get; init; }
    public required IReadOnlyList<BagShape> Bags { get; init; }
}

internal sealed record MudLayerShape
{
    [AllowedValues("pre-slope", "bed")] public required string Layer { get; init; }
    public required bool HasFall { get; init; }
    public required TwoEnds Thinnest { get; init; }
    public required TwoEnds Thickest { get; init; }
    public required TwoEnds Volume { get; init; }
    public required TwoEnds Pounds { get; init; }
    public required IReadOnlyList<BagShape> Bags { get; init; }
}

internal sealed record BagShape
{
    public required decimal Pounds { get; init; }
    public required decimal Yield { get; init; }
    public required TwoEnds Exact { get; init; }
    public required TwoEnds Whole { get; init; }
    public required TwoEnds WithWaste { get; init; }
}

internal sealed record MudWaterShape
{
    public required decimal? Depth { get; init; }
    public required decimal? Volume { get; init; }
    public required decimal? Pounds { get; init; }
}
