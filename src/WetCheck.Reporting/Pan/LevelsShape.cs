using System.ComponentModel;
using System.ComponentModel.DataAnnotations;

namespace WetCheck.Reporting;

internal sealed record LevelsShape
{
    public required TwoFigures? FirstOutAt { get; init; }
    public required decimal? FirstOut { get; init; }
    public required int Readings { get; init; }
    public required decimal? HalfMark { get; init; }
    public required decimal? Spacing { get; init; }

    [Description("A hollow narrower than this can hide between the points.")]
    public required decimal? Hides { get; init; }

    public required IReadOnlyList<LevelPlaneShape> Planes { get; init; }
    public required IReadOnlyList<LowSpotShape> LowSpots { get; init; }
    public required IReadOnlyList<FlatShape> Flats { get; init; }
    public required IReadOnlyList<BumpShape> Bumps { get; init; }
    public required IReadOnlyList<ReadAgainShape> ReadAgain { get; init; }

    [Description("Height over the drain, or over the lowest reading; closed where the last point is also the first.")]
    public required IReadOnlyList<ContourShape> Contours { get; init; }

    [Description(MissingShape.All)] public required IReadOnlyList<MissingShape> Missing { get; init; }
}

internal sealed record LevelPlaneShape
{
    [AllowedValues("plane", "fold")] public required string Kind { get; init; }
    public required string Place { get; init; }
    public required int Readings { get; init; }
    public required decimal? Estimate { get; init; }
    public required decimal? Least { get; init; }
    public required decimal? Most { get; init; }
    public required decimal Uneven { get; init; }
    public required IReadOnlyList<LevelHeldShape> Held { get; init; }
}

internal sealed record LevelHeldShape
{
    [AllowedValues("along-folds", "square")] public required string Measure { get; init; }
    public required decimal Least { get; init; }
    public required decimal Most { get; init; }
    public required IReadOnlyList<string> Held { get; init; }
    public required bool Disputed { get; init; }
    [AllowedValues("ok", "at-the-limit", "read-again", "correction")] public required string Flat { get; init; }
    [AllowedValues("ok", "at-the-limit", "read-again", "correction", null)] public required string? Steep { get; init; }
}

internal sealed record LowSpotShape
{
    public required TwoFigures At { get; init; }
    public required decimal Depth { get; init; }
    [Description("Over 0: water stands there whatever the marks leave open.")] public required decimal Least { get; init; }
    public required decimal Most { get; init; }
    public required decimal Area { get; init; }
    public required decimal Volume { get; init; }
}

internal sealed record FlatShape
{
    public required TwoFigures At { get; init; }
    public required decimal Most { get; init; }
}

internal sealed record BumpShape
{
    public required TwoFigures At { get; init; }
    [Description("Under 0: to add.")] public required decimal Shave { get; init; }
    public required int Readings { get; init; }
}

internal sealed record ReadAgainShape
{
    public required TwoFigures At { get; init; }
    [AllowedValues("twice", "outside", "alone")] public required string Why { get; init; }
}

internal sealed record ContourShape
{
    public required decimal Height { get; init; }
    public required IReadOnlyList<TwoFigures> Line { get; init; }
}
