using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Where a reading comes from.</summary>
/// <param name="IsOwn">The reading itself says its tool; one said for all counts only where it can measure.</param>
internal sealed record Provenance(Tool? Tool, string? By, string? Date, bool IsOwn = false)
{
    /// <summary>As typed: a file or a number, kept and shown, never opened.</summary>
    public string? Photo { get; init; }

    public static readonly Provenance Nobody = new(null, null, null);

    /// <summary>Null where the tool of the question counts, or the one said has no marks for it.</summary>
    public Tool? ToolFor(ReadingKind reading) =>
        Tool is { } tool && (reading.Measure is { } measure ? HasMarks(tool, measure) : IsOwn) ? tool : null;

    /// <summary>The reading says a tool that has no marks for what was read.</summary>
    public bool IsOdd(ReadingKind reading) =>
        IsOwn && Tool is { } tool && reading is { Measure: { } measure, Tool: { } asked } && HasMarks(asked, measure)
            && !HasMarks(tool, measure);

    private static bool HasMarks(Tool tool, Measure measure) => tool.Marks.ContainsKey(measure);
}
