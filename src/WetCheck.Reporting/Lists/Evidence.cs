using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What a check's result rests on: the side that decides, and the test in it that decides.</summary>
internal sealed record Evidence(Side? Side, Measured? Test)
{
    public static Evidence Of(Check check)
    {
        var sides = check.Sides;
        var side = sides.FirstOrDefault(s => s.Outcome == Wanted(check))
            ?? sides.FirstOrDefault(s => s.Outcome == Outcome.Correction) ?? (sides.Count > 0 ? sides[0] : null);
        return new Evidence(side, side is null ? null : TestOf(side, check));
    }

    /// <summary>
    /// The test that failed, a measure before a choice: of two ways it is the one with a figure to reach. Else one that is open; null where
    /// all are met, or as many as are needed: what the way not taken lacks decides nothing.
    /// </summary>
    public static Measured? Deciding(Side side) => side.Outcome == Outcome.Ok ? null
        : side.Tests.FirstOrDefault(test => test is { Answer: Tri.No, Condition: Condition.Compare })
            ?? side.Tests.FirstOrDefault(test => test.Answer == Tri.No) ?? side.Tests.FirstOrDefault(test => test.Answer == Tri.Unknown);

    /// <summary>Of an open check the one too close to call, if there is one.</summary>
    private static Measured? TestOf(Side side, Check check)
    {
        var near = check.Judgement.Hangs.Where(hang => hang.Near).Select(hang => hang.Id).ToHashSet();
        var close = side.Tests.FirstOrDefault(test => test.Answer != Tri.Yes && test.Fact is { } fact && Ways(fact)
            .Any(way => near.Contains(way.Id)));
        return close ?? Deciding(side) ?? side.Tests.FirstOrDefault(test => test.Answer == Tri.Yes)
            ?? (side.Tests.Count > 0 ? side.Tests[0] : null);
    }

    /// <summary>A fact, and what it is worked out from, by every way.</summary>
    private static IEnumerable<Fact> Ways(Fact fact) => [fact, .. fact.From.SelectMany(Ways), .. fact.Also is { } also ? Ways(also) : []];

    private static Outcome Wanted(Check check) => check switch
    {
        { Result: Result.Correction } or { Paper: Paper.Short } => Outcome.Correction,
        { Result: Result.Ok } or { Paper: Paper.Good } => Outcome.Ok,
        { Result: Result.NotHere } => Outcome.NotHere,
        _ => Outcome.Open,
    };
}
