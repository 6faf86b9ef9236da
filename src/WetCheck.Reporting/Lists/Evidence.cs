using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What a check's result rests on: the side that decides, and the test in it that decides.</summary>
internal sealed record Evidence(Side? Side, Measured? Test)
{
    public static Evidence Of(Check check)
    {
        var sides = check.Sides;
        var side = sides.FirstOrDefault(s => s.Outcome == Wanted(check)) ?? (sides.Count > 0 ? sides[0] : null);
        return new Evidence(side, side is null ? null : TestOf(side, check));
    }

    /// <summary>The one that failed; else the one too close to call; else the first that was made.</summary>
    private static Measured? TestOf(Side side, Check check)
    {
        var near = check.Judgement.Hangs.Where(hang => hang.Near).Select(hang => hang.Id).ToHashSet();
        return side.Tests.FirstOrDefault(test => test.Answer == Tri.No)
            ?? side.Tests.FirstOrDefault(test => test.Fact is { } fact && near.Contains(fact.Id))
            ?? side.Tests.FirstOrDefault(test => test.Answer == Tri.Unknown)
            ?? (side.Tests.Count > 0 ? side.Tests[0] : null);
    }

    private static Outcome Wanted(Check check) => check switch
    {
        { Result: Result.Correction } or { Paper: Paper.Short } => Outcome.Correction,
        { Result: Result.Ok } or { Paper: Paper.Good } => Outcome.Ok,
        { Result: Result.NotHere } => Outcome.NotHere,
        _ => Outcome.Open,
    };
}
