using System.ComponentModel;
using System.ComponentModel.DataAnnotations;

namespace WetCheck.Reporting;

internal sealed record MarksShape
{
    [AllowedValues("", "no-mark", "not-seen", "not-drawn", "short-channel")] public required string Why { get; init; }
    public required TwoFigures? Window { get; init; }
    public required MarkPlanShape? Plan { get; init; }
    [Description(MissingShape.All)] public required IReadOnlyList<MissingShape> Missing { get; init; }
}

internal sealed record MarkPlanShape
{
    [AllowedValues("point", "grate", "channel", "channel-at-wall")] public required string Drain { get; init; }
    public required bool GivenRim { get; init; }
    public required bool OnTape { get; init; }
    public required bool Level { get; init; }
    public required decimal RimLow { get; init; }
    public required decimal RimHigh { get; init; }
    public required IReadOnlyList<RibShape> Ribs { get; init; }
    public required decimal Steepest { get; init; }
    public required decimal Flattest { get; init; }
    public required int Dropped { get; init; }
    public required IReadOnlyList<MarkHeldShape> Held { get; init; }
    public required IReadOnlyList<MarkBelowShape> Below { get; init; }
}

internal sealed record RibShape
{
    [AllowedValues("corner", "wall", "plane")] public required string Kind { get; init; }
    public required string Name { get; init; }
    public required TwoFigures From { get; init; }
    public required TwoFigures To { get; init; }
    public required decimal Length { get; init; }
    public required decimal Height { get; init; }

    [Description("How far from the drain, and the height there.")]
    public required IReadOnlyList<TwoFigures> Marks { get; init; }
}

internal sealed record MarkHeldShape
{
    [AllowedValues("square", "along-folds")] public required string Measure { get; init; }
    public required decimal Least { get; init; }
    public required decimal Most { get; init; }
    public required IReadOnlyList<string> Held { get; init; }
    public required bool Kept { get; init; }
    public required bool Tight { get; init; }
}

internal sealed record MarkBelowShape
{
    [AllowedValues("bed", "pre-slope")] public required string Layer { get; init; }
    public required decimal Down { get; init; }
}
