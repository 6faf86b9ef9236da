using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>What the rules of one production say of a part, as a fact of a session. Compared by reference.</summary>
/// <param name="findings">At least one.</param>
internal sealed class PartFindings(PartState state, IReadOnlyList<Finding> findings)
{
    public PartState State { get; } = state;

    public IReadOnlyList<Finding> Findings { get; } = findings;
}
