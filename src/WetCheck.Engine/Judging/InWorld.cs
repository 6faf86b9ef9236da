using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>What a rule comes to in one world.</summary>
/// <param name="Cells">Where the world lies on each axis.</param>
/// <param name="InForce">Its versions.</param>
internal sealed record InWorld(
    World World, IReadOnlyList<int> Cells, Outcome Outcome, IReadOnlyList<Hang> Hangs,
        IReadOnlyList<RuleVersion> InForce, IReadOnlyList<Measured> Tests);
