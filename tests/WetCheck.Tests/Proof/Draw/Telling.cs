namespace WetCheck.Tests.Proof;

/// <summary>How much of a room is told.</summary>
/// <param name="Known">Share of what can be told that is.</param>
/// <param name="Plainly">Nothing planned, hidden, bounded or read from another level than the one asked.</param>
/// <param name="Focus">Kinds of part that are told with more care; null: none.</param>
internal sealed record Telling(double Known, bool Plainly = false, IReadOnlySet<string>? Focus = null)
{
    public static readonly Telling Everything = new(1, Plainly: true);

    public double Of(string kind) => Focus is not null && Focus.Contains(kind) ? Math.Max(Known, 0.93) : Known;
}
