using WetCheck.Engine;
using WetCheck.Geometry;
using WetCheck.Model;
using WetCheck.Proving;

namespace WetCheck.Tests.Proof;

/// <summary>Where plans change nothing that a rule looks at, it is judged once: judged twice it says the same.</summary>
public sealed class OnPaperAgain
{
    private static readonly int Jobs = Depth.Of(daily: 30, deep: 300, night: 3000);

    private static readonly IReadOnlyList<RulePlan> Plans = [.. TheBook.Book.Rules.Select(rule => new RulePlan(rule))];
    private static readonly PlainEvaluator Plain = new(TheBook.Book.Rules);

    [Fact]
    public void What_is_judged_once_is_what_two_passes_say()
    {
        var (once, twice) = (0, 0);
        foreach (var scene in Enumerable.Range(0, Jobs).SelectMany(Scenes))
        {
            Said(scene, Judge.Of(scene)).Should()
                .Equal(Said(scene, Judge.Of(scene, plans: true)), $"{scene.Rule.Id} on {scene.Self.Part.Id}");
            _ = OnPaper.Differs(scene) ? twice++ : once++;
        }

        Math.Min(once, twice).Should().BePositive("some scenes have plans, some have none");
    }

    private static IEnumerable<Scene> Scenes(int number)
    {
        var states = Derive.From(Drawn.Of(number, TheBook.Book).Job, TheBook.Book.Vocabulary);
        var conclusions = Plain.Conclude(states);
        return Plans.Where(plan => plan.Rule.Body is not RuleBody.Conclude)
            .SelectMany(plan => PlainEvaluator.Scenes(plan, states, conclusions));
    }

    private static IEnumerable<string> Said(Scene scene, Judgement judgement) =>
        Spoken.Of([new Finding(scene.Rule, scene.Self, judgement)], []);
}
