using System.ComponentModel;

namespace WetCheck.Reporting;

internal sealed record LinerShape
{
    public required decimal? Upturn { get; init; }
    public required decimal? Along { get; init; }
    public required decimal? Across { get; init; }
    public required IReadOnlyList<FlapShape> Flaps { get; init; }
    public required IReadOnlyList<LinerCornerShape> Corners { get; init; }
    public required IReadOnlyList<RollShape> Rolls { get; init; }
    [Description(MissingShape.All)] public required IReadOnlyList<MissingShape> Missing { get; init; }
}

internal sealed record FlapShape
{
    public required string Side { get; init; }
    public required decimal Length { get; init; }
    public required decimal Beyond { get; init; }
}

internal sealed record LinerCornerShape
{
    public required string Corner { get; init; }
    public required TwoFigures? At { get; init; }
    public required decimal Covers { get; init; }
    public required bool Patch { get; init; }
}

internal sealed record RollShape
{
    public required decimal Width { get; init; }
    public required decimal Length { get; init; }
    public required bool AlongEntry { get; init; }
    public required decimal Waste { get; init; }
}
