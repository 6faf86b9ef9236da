using WetCheck.Engine;
using WetCheck.Model;

namespace WetCheck.Proving;

/// <summary>Quantities of a rule that no case holds: moved by their smallest step, every case comes out as before.</summary>
internal sealed class IdleLimits(RuleBook book)
{
    private readonly IReadOnlyList<Rule> _concluding = [.. book.Rules.Where(rule => rule.Body is RuleBody.Conclude)];

    /// <param name="cases">Of the rule, each of which holds as it stands.</param>
    public IEnumerable<RuleFault> Find(Rule rule, IReadOnlyList<ReadCase> cases)
    {
        foreach (var limit in MovedLimit.Of(rule))
        {
            var said = $"{limit.Number.Typed.FromBase(limit.Number.Value)} {limit.Number.Typed.Key}";
            if (!Shows(limit.Up, cases))
            {
                yield return new RuleFault(limit.At,
                    $"{said} may be more by its smallest step and no case notices: write a case on the limit");
            }

            if (!Shows(limit.Down, cases))
            {
                yield return new RuleFault(limit.At,
                    $"{said} may be less by its smallest step and no case notices: write a case one step from the limit");
            }
        }
    }

    /// <summary>Some case misses what it expects.</summary>
    private bool Shows(Rule moved, IReadOnlyList<ReadCase> cases)
    {
        var plain = new PlainEvaluator([moved, .. _concluding.Where(rule => rule.Id != moved.Id)]);
        return cases.Any(one => !Proven(one, moved, plain).Holds);
    }

    private Proof Proven(ReadCase one, Rule moved, PlainEvaluator plain)
    {
        var conclusions = plain.Conclude(one.States);
        IReadOnlyList<Finding> findings = moved.Body is RuleBody.Conclude ? []
            : [.. PlainEvaluator.Judged(new RulePlan(moved), one.States, conclusions)];
        return Proof.Of(one, moved, book.Vocabulary, findings, conclusions);
    }
}
