using WetCheck.Intake;

namespace WetCheck.Asking;

/// <summary>What became of the log meanwhile.</summary>
/// <param name="Come">Answers that somebody else kept.</param>
/// <param name="Gone">Answers that no longer stand in it.</param>
internal sealed record LogNews(IReadOnlyList<LoggedAnswer> Come, IReadOnlyList<LoggedAnswer> Gone)
{
    public static LogNews Of(IReadOnlyList<LoggedAnswer> before, IReadOnlyList<LoggedAnswer> now)
    {
        var old = before.Select(answer => answer.Line).ToHashSet(StringComparer.Ordinal);
        var kept = now.Select(answer => answer.Line).ToHashSet(StringComparer.Ordinal);
        return new LogNews([.. now.Where(answer => !old.Contains(answer.Line))], [.. before.Where(answer => !kept.Contains(answer.Line))]);
    }
}
