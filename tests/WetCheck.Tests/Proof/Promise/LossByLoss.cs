using WetCheck.Flow;
using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Loses all that is known of a job, one by one in a random order, until nothing is left.</summary>
internal static class LossByLoss
{
    /// <param name="faults">Takes what a loss made that was not there.</param>
    /// <returns>How much was lost.</returns>
    public static int All(KeptWalk kept, Vocabulary vocabulary, Dice dice, string name, List<string> faults)
    {
        var before = Outcomes.Of(kept.Findings);
        var count = 0;
        while (Losses.Of(kept.Job, vocabulary, dice) is { Count: > 0 } all)
        {
            var loss = dice.Pick(all);
            kept.Change(loss.After());
            var after = Outcomes.Of(kept.Findings);
            faults.AddRange(Outcomes.New(before, after).Select(fault => $"{name}, lost {loss.Of}: {Spelled(kept, fault)}"));
            before = after;
            count++;
        }

        return count;
    }

    private static string Spelled(KeptWalk kept, string fault) =>
        $"{fault}, " + Proof.Spelled.Of(
            kept.Findings.First(finding => fault.StartsWith(finding.Rule.Id + " ", StringComparison.Ordinal)).Rule);
}
