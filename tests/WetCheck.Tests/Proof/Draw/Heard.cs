using WetCheck.Engine;
using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>What one rule has said so far: its outcomes, the versions that decided, the branches that were met alone.</summary>
internal sealed class Heard(Rule rule)
{
    private static readonly Outcome[] EachWay = [Outcome.Ok, Outcome.Correction, Outcome.Open];

    private readonly HashSet<Outcome> _outcomes = [];
    private readonly HashSet<RuleVersion> _versions = new(ReferenceEqualityComparer.Instance);
    private readonly BranchTally _branches = new(rule);

    public IEnumerable<string> Missing =>
    [
        .. rule.Body is RuleBody.Require
            ? EachWay.Where(outcome => !_outcomes.Contains(outcome)).Select(outcome => outcome.ToString()) : [],
        .. rule.Body is RuleBody.Require
            ? rule.Versions.Where(version => !_versions.Contains(version))
            .Select(version => $"version at line {version.At.Line}") : [],
        .. _branches.Never,
    ];

    public void Count(Scene scene)
    {
        _branches.Count(scene);
        var judgement = Judge.Of(scene);
        _outcomes.Add(judgement.Now);
        _versions.UnionWith(judgement.Sides.Where(side => side.Outcome is Outcome.Ok or Outcome.Correction)
            .SelectMany(side => side.Versions));
    }
}
