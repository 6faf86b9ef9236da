using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>What the engine said of one check while something was not known, and what all completions say.</summary>
/// <param name="Job">Its number, and what was not known.</param>
internal sealed record Agreement(string Job, string Rule, string Part, Result Engine, IReadOnlySet<Result> Completed)
{
    /// <summary>An OK with a Correction or Read again among the completions, a Correction with an OK.</summary>
    public bool IsContradicted => Engine == Result.Ok ? Completed.Overlaps([Result.Correction, Result.ReadAgain])
        : Engine == Result.Correction && Completed.Contains(Result.Ok);

    /// <summary>All Correction, or all OK or Not on this job with one OK at least.</summary>
    public bool IsDecided =>
        Completed.SetEquals([Result.Correction])
        || (Completed.Contains(Result.Ok) && Completed.IsSubsetOf([Result.Ok, Result.NotHere]));

    public bool IsSaid => Engine is Result.Ok or Result.Correction;

    public override string ToString() => $"{Job}: {Rule} on {Part} is {Engine}, completed {string.Join(", ", Completed.Order())}";
}
