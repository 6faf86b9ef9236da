using WetCheck.Engine;
using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Which branches of a rule's any-ofs were alone in being met.</summary>
internal sealed class BranchTally
{
    private readonly Dictionary<Condition, int> _alone = new(ReferenceEqualityComparer.Instance);

    public BranchTally(Rule rule)
    {
        foreach (var branch in rule.Conditions().OfType<Condition.AnyOf>().SelectMany(any => any.Of))
        {
            _alone[branch] = 0;
        }
    }

    public IEnumerable<string> Never => _alone.Where(one => one.Value == 0).Select(one => $"branch at line {one.Key.At.Line}");

    public void Count(Scene scene)
    {
        var rule = scene.Rule;
        var limits = rule.Versions.Select(version => version.Limit).Append(null).Distinct().ToList();
        Count(scene, rule.When, [null], Phase.When);
        Count(scene, (rule.Body as RuleBody.Require)?.Holds, limits, Phase.Require);
        foreach (var version in rule.Versions)
        {
            Count(scene, version.When, [null], Phase.When);
            Count(scene, version.Require, [version.Limit], Phase.Require);
        }
    }

    private void Count(Scene scene, Condition? condition, IReadOnlyList<Quantity?> limits, Phase phase)
    {
        foreach (var any in condition?.Parts().OfType<Condition.AnyOf>() ?? [])
        {
            foreach (var evaluation in limits.Select(limit => new Evaluation(scene, World.Real, onPaper: false, limit: limit)))
            {
                if (NeedsLimit(any) && evaluation.Limit is null)
                {
                    continue;
                }

                var met = any.Of.Where(branch => evaluation.Of(branch, scene.Self, phase).Value == Tri.Yes).ToList();
                if (met.Count == 1)
                {
                    _alone[met[0]]++;
                }
            }
        }
    }

    private static bool NeedsLimit(Condition condition) => condition.Parts().Any(part => part is Condition.Compare { To: Operand.Limit });
}
