using WetCheck.Engine;
using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>
/// What each rule with a requirement comes to on each part, before stage and folding. Corrections on paper are open
/// here.
/// </summary>
internal static class Outcomes
{
    public static Dictionary<(string Rule, string Part), Outcome> Of(IEnumerable<Finding> findings) => findings
        .Where(finding => finding.Rule.Body is RuleBody.Require)
        .ToDictionary(finding => (finding.Rule.Id, finding.State.Part.Id), finding => finding.Judgement.Now);

    /// <summary>What a loss made worse: an OK or a Correction that was not there. Only Not on this job may become OK.</summary>
    public static IEnumerable<string> New(
        IReadOnlyDictionary<(string Rule, string Part), Outcome> before,
            IReadOnlyDictionary<(string Rule, string Part), Outcome> after) => after
        .Select(one => (one.Key, Before: before.GetValueOrDefault(one.Key, Outcome.NotHere), After: one.Value))
        .Where(one => one.After == Outcome.Ok ? one.Before is not (Outcome.Ok or Outcome.NotHere)
            : one.After == Outcome.Correction && one.Before != Outcome.Correction)
        .Select(one => $"{one.Key.Rule} on {one.Key.Part}: {one.Before} became {one.After}");
}
