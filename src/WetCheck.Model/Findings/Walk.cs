namespace WetCheck.Model;

/// <summary>All that one walk over a job found. Every list is made from it.</summary>
/// <param name="Entries">In order of the list: by result, nearest cover, number.</param>
/// <param name="Checks">Unfolded, in order of rule and part.</param>
/// <param name="Looks">In the order they are owed.</param>
/// <param name="Cautions">Of this stage, by number.</param>
/// <param name="Notes">Shown ones, by number.</param>
/// <param name="Problems">Of the job file, in file order.</param>
public sealed record Walk(
    Job Job,
    RuleBook Book,
    IReadOnlyList<Entry> Entries,
    IReadOnlyList<Check> Checks,
    IReadOnlyList<Look> Looks,
    IReadOnlyList<Check> Cautions,
    IReadOnlyList<Check> Notes,
    IReadOnlyList<Problem> Problems)
{
    /// <summary>What can be drawn of the floor.</summary>
    public FloorPlan Floor { get; init; } = FloorPlan.Unknown;

    /// <summary>Corrections, on paper or not.</summary>
    public IEnumerable<Entry> ToFix => Entries.Where(entry => entry.Result == Result.Correction);

    public Verdict Verdict => ToFix.Any() ? Verdict.NotReady
        : Entries.Any(e => e.Result is Result.ToCheck or Result.ReadAgain || e.Paper == Paper.Short) ? Verdict.Unfinished
        : Verdict.NothingOwed;
}

/// <summary>Readiness for the next cover; never a word on the shower.</summary>
public enum Verdict { NotReady, Unfinished, NothingOwed }
