using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>
/// The old work of a job, or another of its parts, as conditions see it. Plans count for nothing: what was not seen is
/// unknown.
/// </summary>
internal sealed class OldWork(PartState root, IReadOnlyList<PartState> known)
{
    /// <summary>What brought the owner to ask; null: not told.</summary>
    public string? Symptom => root.Facts.TryGetValue("symptom", out var fact) && fact.Now is Known.OneOf told ? told.Choice : null;

    public Answer Of(Condition condition)
    {
        var rule = new Rule("", 0, root.Part.Kind, condition, new RuleBody.Note(), [], [], null, Severity.TouchUp, "",
            new Dictionary<string, RuleTexts>(), condition.At);
        var plan = new RulePlan(rule);
        var scene = RuleProduction.SceneOf(plan, root,
            [.. plan.Nearest.Select(kind => known.First(state => Relations.IsNearest(root.Part, state.Part, kind)))],
            known.Where(state => plan.Relations.Any(relation => Relations.Holds(relation, root.Part, state.Part))),
            []);
        return new Evaluation(scene, World.Real, onPaper: false).Of(condition, root, Phase.When);
    }

    public Sign? Find(Model.Path path) =>
        known.FirstOrDefault(state => state.Kind == (path.Kind ?? root.Kind)) is { } state
        && state.Facts.TryGetValue(path.Reading.Name, out var fact)
        ? new Sign(state.Part, fact)
        : null;

    public static IEnumerable<Sign> SignsOf(Answer answer) => TestsOf(answer, Tri.Yes);

    public static IEnumerable<Sign> TestsOf(Answer answer, Tri wanted) =>
        answer.Tests.Where(test => test.Answer == wanted)
        .Select(test => test.Fact is { } fact ? new Sign(test.Of, fact) : null).OfType<Sign>();
}
