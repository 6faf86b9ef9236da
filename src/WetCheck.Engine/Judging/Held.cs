using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>A number held against another by one way.</summary>
/// <param name="Slack">How far it is on the good side.</param>
/// <param name="Limit">What it was held against, in its own datum.</param>
/// <param name="Facts">What went into the sum; 1 where more of it is more slack.</param>
internal sealed record Held(Spread Slack, Spread Limit, IReadOnlyList<(Fact Fact, int Sign)> Facts)
{
    /// <summary>Yes if every value as read passes, No if no value of the band does.</summary>
    public Tri Test(bool strict, bool asRead)
    {
        if (Slack.AsRead.Lo is { } lo && (lo.Sign > 0 || (lo.Sign == 0 && (!strict || Slack.AsRead.LoOpen))))
        {
            return Tri.Yes;
        }

        return Fails(asRead ? Slack.AsRead : Slack.Band, strict) ? Tri.No : Tri.Unknown;
    }

    /// <summary>The facts that an Unknown of this way hangs on.</summary>
    public IReadOnlyList<Hang> Hangs(Evaluation evaluation, Phase phase, bool strict)
    {
        var leaves = Facts.SelectMany(one => Leaves(one.Fact)).Where(fact => !evaluation.World.Settles(fact)).Distinct().ToList();
        // Where every value as read fails, only the tool's band is open: what was read once is read again, not looked for otherwise.
        var near = Fails(Slack.AsRead, strict) ? leaves.Where(fact => fact.ReadOnce).ToList() : [];
        var missing = leaves.Where(fact => fact.Clash || (IsMissing(fact.Given(evaluation.OnPaper)) && !near.Contains(fact))).ToList();
        if (missing.Count + near.Count == 0)
        {
            missing = leaves;
        }

        return [.. missing.Select(fact => Evaluation.HangOn(fact, phase, near: fact.Clash)),
            .. near.Select(fact => Evaluation.HangOn(fact, phase, near: true))];
    }

    private static bool Fails(Interval slack, bool strict) =>
        slack.Hi is { } hi && (hi.Sign < 0 || (hi.Sign == 0 && (strict || slack.HiOpen)));

    private static IEnumerable<Fact> Leaves(Fact fact) => fact.From.Count == 0 ? [fact] : fact.From.SelectMany(Leaves);

    private static bool IsMissing(Known known) => known switch
    {
        Known.Number number => !number.Spread.AsRead.IsPoint,
        Known.Pair pair => pair.Between is not Between.Finished and not Between.NotSaid,
        _ => true,
    };
}
