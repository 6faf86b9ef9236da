using WetCheck.Flow;
using WetCheck.Model;

namespace WetCheck.Proving;

/// <summary>
/// Proves the rules of a book one by one: each case comes out as expected, in one the rule stays silent, no limit is idle, the
/// words are there for every reader in both languages, short and plain, and somebody says so.
/// </summary>
internal sealed class BookProof(ReadyBook ready, IReadOnlyList<RuleCase> cases)
{
    /// <summary>What a rule comes to where it has nothing to object.</summary>
    private static readonly string[] s_silent = ["ok", "not-here", "silent", "no"];

    private readonly ILookup<string, RuleCase> _cases = cases.ToLookup(one => one.Rule, StringComparer.Ordinal);
    private readonly IdleLimits _idle = new(ready.Book);
    private readonly OwnerPlainness _plainness = new(ready.Book);

    public RuleProof Prove(Rule rule)
    {
        var read = _cases[rule.Id].Select(one => ReadCase.Read(one, ready.Book.Vocabulary)).ToList();
        var compiled = ready.Alone(rule).Compiled;
        var proofs = read.ConvertAll(one => Proof.Of(one, rule, ready.Book.Vocabulary, compiled));
        var idle = proofs.TrueForAll(one => one.Holds) ? _idle.Find(rule, read) : [];
        var faults =
            Brings(rule).Concat(RuleWords.Faults(rule)).Concat(_plainness.Faults(rule))
            .Select(says => new RuleFault(rule.At, says));
        return new RuleProof(rule, proofs, [.. faults.Concat(idle)]);
    }

    private IEnumerable<string> Brings(Rule rule)
    {
        if (!rule.AllRows.Any(row => ready.Book.Sources.GetValueOrDefault(row, []).Count > 0))
        {
            yield return "nobody says so: name a row of sources.yaml, or one whose status is practice";
        }

        if (!_cases[rule.Id].Any(one => one.Expect.Values.All(said => s_silent.Contains(said, StringComparer.Ordinal))))
        {
            yield return "there is no case in which it stays silent: write one that looks alike and is ok, not-here, silent or no";
        }
    }
}
