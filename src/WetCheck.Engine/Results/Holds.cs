using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>
/// The value of a planned reading within which a check is met, found for sums and differences only: each planned operand in
/// turn, the others as they stand. A limit that must not be reached itself has no such value.
/// </summary>
internal static class Holds
{
    public static IReadOnlyList<Hold> Of(Judgement judgement) => [.. judgement.SidesOnPaper
        .SelectMany(side => side.Tests)
        .Where(test => test.Condition is Condition.Compare { By: Comparison.AtLeast or Comparison.AtMost })
        .SelectMany(Of)
        .GroupBy(hold => (hold.Fact.Id, hold.By))
        .Select(group => group.Key.By == Comparison.AtMost ? group.MinBy(hold => hold.Bound)! : group.MaxBy(hold => hold.Bound)!)
        .OrderBy(hold => hold.Fact.Id.ToString(), StringComparer.Ordinal)];

    private static IEnumerable<Hold> Of(Measured test)
    {
        if (test.Slack.AsRead is not { IsPoint: true, Lo: { } slack })
        {
            yield break;
        }

        foreach (var (fact, sign) in test.Counted)
        {
            if (fact.IsPlanned && fact.OnPaper is Known.Number { Spread.AsRead: { IsPoint: true, Lo: { } planned } })
            {
                var bound = sign > 0 ? planned - slack : planned + slack;
                if (fact.Kind.Least is not { } least || bound >= least.Value)
                {
                    yield return new Hold(fact, sign > 0 ? Comparison.AtLeast : Comparison.AtMost, bound);
                }
            }
        }
    }
}
