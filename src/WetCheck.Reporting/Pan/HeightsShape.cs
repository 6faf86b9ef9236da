using System.ComponentModel;
using System.ComponentModel.DataAnnotations;

namespace WetCheck.Reporting;

/// <summary>Heights above the datum named: one number as read, or the bounds that are known of it.</summary>
internal sealed record HeightsShape
{
    public required IReadOnlyList<HeightLineShape> Lines { get; init; }
    public required IReadOnlyList<HeightAskedShape> Asked { get; init; }
    public required IReadOnlyList<WaterShape> Water { get; init; }
    [Description(MissingShape.All)] public required IReadOnlyList<MissingShape> Missing { get; init; }
}

internal sealed record HeightLineShape
{
    [AllowedValues("drain", "walls", "entry", "ledges", "size")] public required string Group { get; init; }
    public required string Key { get; init; }
    public required string Place { get; init; }
    public required string? Above { get; init; }
    public required decimal? Height { get; init; }
    public required decimal? Least { get; init; }
    public required decimal? Most { get; init; }
    public required bool Planned { get; init; }
    public required bool ReadAgain { get; init; }
}

internal sealed record HeightAskedShape
{
    public required string Key { get; init; }
    public required string Above { get; init; }
    public required decimal? Height { get; init; }
    public required decimal? Least { get; init; }
    public required decimal? Most { get; init; }
    public required bool Planned { get; init; }
    public required bool ReadAgain { get; init; }
    public required IReadOnlyList<string> Codes { get; init; }
    public required string Say { get; init; }
}

internal sealed record WaterShape
{
    [AllowedValues("liner", "membrane", "floor")] public required string Layer { get; init; }
    public required bool InUse { get; init; }
    [AllowedValues("yes", "no", "unknown")] public required string AtTheEntry { get; init; }
    public required string Above { get; init; }
    public required IReadOnlyList<WaterWayShape> Ways { get; init; }
    public required IReadOnlyList<WaterWayShape> Open { get; init; }
    public required IReadOnlyList<string> Unseen { get; init; }
}

internal sealed record WaterWayShape
{
    public required string Key { get; init; }
    public required string Place { get; init; }
    public required decimal? Height { get; init; }
    public required decimal? Least { get; init; }
    public required decimal? Most { get; init; }
    public required bool Planned { get; init; }
    public required bool ReadAgain { get; init; }
}
