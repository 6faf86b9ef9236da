using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Where a reading comes from.</summary>
/// <param name="IsOwn">The reading itself says its tool; one said for all counts only where it can measure.</param>
internal sealed record Provenance(Tool? Tool, string? By, string? Date, bool IsOwn = false)
{
    public static readonly Provenance Nobody = new(null, null, null);

    public Tool? ToolFor(ReadingKind reading) =>
        Tool is { } tool && (IsOwn || (reading.Measure is { } measure && tool.Marks.ContainsKey(measure))) ? tool : null;
}
