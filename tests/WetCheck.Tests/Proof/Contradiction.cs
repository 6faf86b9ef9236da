using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>
/// Whether what a job says can all be true at once, as it was read: no fact whose readings differ, no number that two ways tell
/// apart, and none that passes a limit by one way as read while by another no value within what the tools can tell does; nor, where
/// the limit chooses a version of a rule, the value as read.
/// </summary>
internal static class Contradiction
{
    public static bool In(IReadOnlyList<PartState> states, IReadOnlyList<Limit> limits)
    {
        var levels = states.Select(state => state.Surroundings).OfType<Surroundings>().Single().Levels;
        var facts = states.SelectMany(state => state.Facts.Values).ToList();
        return facts.Any(fact => fact.Clash)
            || facts.Any(fact => Apart([.. Ways(fact).Select(way => way.Spread)]))
            || Pairs([.. levels.Owners.Keys])
                .Any(pair => Apart([.. levels.Between(pair.A, pair.B).Select(way => way.Given(onPaper: false))]))
            || limits.Any(limit => states.Where(state => state.Part.Kind == limit.Kind)
                .Any(state => Divided(Slacks(state, limit, levels, states), limit)));
    }

    private static bool Apart(IReadOnlyList<Spread> ways) =>
        ways.Any(way => way.Band.IsEmpty) || Pairs(ways).Any(pair => pair.A.Band.Intersect(pair.B.Band).IsEmpty);

    /// <summary>Yes by one way as read, while by another it is No.</summary>
    private static bool Divided(IReadOnlyList<Spread> slacks, Limit limit) =>
        slacks.Any(slack => slack.AsRead.Lo is { } lo && (lo.Sign > 0 || (lo.Sign == 0 && !limit.IsStrict)))
            && slacks.Any(slack => IsNo(slack, limit));

    private static bool IsNo(Spread slack, Limit limit) => (limit.Decides ? slack.AsRead : slack.Band).Hi is { } hi
        && (hi.Sign < 0 || (hi.Sign == 0 && (limit.IsStrict || !slack.AsRead.Contains(0))));

    /// <summary>How far the reading is on the good side of its limit, by every way.</summary>
    private static List<Spread> Slacks(PartState state, Limit limit, Levels levels, IReadOnlyList<PartState> states)
    {
        var fact = state.Facts[limit.Reading.Name];
        var above = limit.Number is { } number
            ? Spreads(fact, limit, levels).Select(spread => spread - Spread.Exactly(number.Value))
            : Ways(fact).SelectMany(own => Others(state, limit.Other!, states).SelectMany(Ways)
                .SelectMany(other => Differences(own, other, levels)));
        return [.. above.Select(spread => limit.IsFloor ? spread : -spread)];
    }

    private static IEnumerable<Fact> Others(PartState state, Model.Path path, IReadOnlyList<PartState> states) =>
        (path.Kind == state.Kind ? [state] : states.Where(one => one.Kind == path.Kind)).Select(one => one.Facts[path.Reading.Name]);

    private static IEnumerable<Spread> Differences(Known.Number own, Known.Number other, Levels levels) =>
        own.Datum is null || other.Datum is null
        ? [own.Spread - other.Spread]
        : levels.Between(own.Datum, other.Datum).Select(way => own.Spread - (other.Spread + way.Given(onPaper: false)));

    /// <summary>The number above the limit's datum, by every way.</summary>
    private static IEnumerable<Spread> Spreads(Fact fact, Limit limit, Levels levels) =>
        limit.Datum is not { } datum ? Ways(fact).Select(way => way.Spread)
        : fact.Kind.Lifts is { } lifts ? levels.Between(datum, lifts).Select(way => way.Given(onPaper: false))
        : Ways(fact).SelectMany(own => levels.Between(datum, own.Datum!).Select(way => own.Spread + way.Given(onPaper: false)));

    private static IEnumerable<Known.Number> Ways(Fact fact)
    {
        for (var one = fact; one is not null; one = one.Also)
        {
            if (one.Now is Known.Number number)
            {
                yield return number;
            }
        }
    }

    private static IEnumerable<(T A, T B)> Pairs<T>(IReadOnlyList<T> all) =>
        all.SelectMany((a, index) => all.Skip(index + 1).Select(b => (a, b)));
}
