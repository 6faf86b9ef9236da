using System.ComponentModel;
using System.ComponentModel.DataAnnotations;

namespace WetCheck.Reporting;

internal sealed record TileShape
{
    public required decimal? Rim { get; init; }
    public required decimal? Allowed { get; init; }
    public required decimal? LargestUncut { get; init; }
    public required IReadOnlyList<TileFoldShape> Folds { get; init; }
    public required IReadOnlyList<TileSizeShape> Sizes { get; init; }
    public required TileLaidShape? Laid { get; init; }
    [Description(MissingShape.All)] public required IReadOnlyList<MissingShape> Missing { get; init; }
}

internal sealed record TileFoldShape
{
    public required TwoFigures? From { get; init; }
    public required decimal? Angle { get; init; }
    public required decimal? Half { get; init; }
}

internal sealed record TileSizeShape
{
    public required decimal? Side { get; init; }
    public required decimal? Worst { get; init; }
    [AllowedValues("yes", "no", "unknown")] public required string Allowed { get; init; }
}

internal sealed record TileLaidShape
{
    public required decimal? Worst { get; init; }
    public required TwoFigures? At { get; init; }
    public required decimal? Gap { get; init; }
    public required int Count { get; init; }
    [Description("Middles of the tiles to cut.")] public required IReadOnlyList<TwoFigures> ToCut { get; init; }
    public required decimal? Best { get; init; }
}
