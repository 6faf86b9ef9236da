using WetCheck.Model;

namespace WetCheck.Proving;

/// <summary>All that is held of a rule: its cases, and what it must bring.</summary>
/// <param name="Faults">In the order of the file.</param>
internal sealed record RuleProof(Rule Rule, IReadOnlyList<Proof> Cases, IReadOnlyList<RuleFault> Faults)
{
    public bool Holds => Faults.Count == 0 && Cases.All(one => one.Holds);
}
