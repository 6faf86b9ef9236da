using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>Whether plans change anything that a rule looks at. Where they don't, what it says on paper is what it says now.</summary>
internal static class OnPaper
{
    public static bool Differs(Scene scene) =>
        Differs(scene.Self, scene.Plan)
        || scene.Nearest.Any(state => Differs(state, scene.Plan))
        || scene.Related.Any(state => Differs(state, scene.Plan))
        || scene.Conclusions.Any(one => one.Now != one.OnPaper || !one.Hangs.SequenceEqual(one.HangsOnPaper))
        || (scene.Plan.ReadsHeights && scene.Surroundings is { } job && job.Levels.Steps.Any(step => Differs(step.Fact)));

    private static bool Differs(PartState state, RulePlan plan)
    {
        foreach (var reading in plan.Readings)
        {
            if (state.Facts.TryGetValue(reading, out var fact) && Differs(fact))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Itself, had by another way, or something that it was worked out from.</summary>
    private static bool Differs(Fact? fact) =>
        fact is not null && (fact.IsPlanned || fact.Now != fact.OnPaper || Differs(fact.Also) || fact.From.Any(Differs));
}
