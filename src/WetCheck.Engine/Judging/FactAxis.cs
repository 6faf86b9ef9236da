using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>A deciding fact: on one side of, or on, every limit named for it; on one choice; or not there.</summary>
internal static class FactAxis
{
    /// <summary>Stands for every choice that the rule does not name.</summary>
    private const string Another = "another";

    /// <param name="cutBand">A reading too close to a limit to call stands on each side of it; else where it was read.</param>
    public static Axis Of(Scene scene, Model.Path path, bool onPaper, bool cutBand)
    {
        var state = scene.Find(path, scene.Self);
        if (state.Exists == Tri.No || !state.Facts.TryGetValue(path.Reading.Name, out var fact))
        {
            return new Axis([], [world => world]);
        }

        var known = fact.Given(onPaper);
        var cells = path.Reading.Is == Form.Choice ? Choices(scene, path, known) : Stretches(scene, path, known, fact, cutBand);
        Func<World, World>[] there = cells.Count == 1 && state.Exists == Tri.Yes
            ? [world => world]
            : [.. cells.Select(cell => (Func<World, World>)(world => world.WithPresence(state.Part, Tri.Yes).WithFact(fact.Id, cell)))];
        return state.Exists == Tri.Yes
            ? new Axis([new Hang(fact.Id, fact, Phase.Version, fact.Clash)], there)
            : new Axis([new Hang(state.Presence, null, Phase.Version, Near: false)],
                [world => world.WithPresence(state.Part, Tri.No), .. there]);
    }

    private static IReadOnlyList<Known> Choices(Scene scene, Model.Path path, Known known)
    {
        // "None" tells of no version that it holds, so it decides as little as a blank: else taking it away would make a Correction.
        if (known is not (Known.Nothing or Known.Absent))
        {
            return [known];
        }

        var named = scene.Plan.Conditions.OfType<Condition.Is>().Where(test => test.Path == path)
            .SelectMany(test => test.OneOf).Distinct(StringComparer.Ordinal).ToList();
        var rest = path.Reading.Choices.Any(choice => !named.Contains(choice.Key)) ? [Another] : Array.Empty<string>();
        return [.. named.Concat(rest).Select(choice => new Known.OneOf(choice))];
    }

    private static IReadOnlyList<Known> Stretches(Scene scene, Model.Path path, Known known, Fact fact, bool cutBand)
    {
        if (!cutBand && known is Known.Number { Spread.AsRead.IsPoint: true })
        {
            return [known];
        }

        var bounds = known is Known.Number number ? (cutBand ? number.Spread.Band : number.Spread.AsRead)
            : fact.Kind.Least is { } least ? Interval.AtLeast(least.Value)
            : Interval.Everything;
        var limits = scene.Plan.Conditions.OfType<Condition.Compare>().Where(test => test.Path == path)
            .SelectMany(test => Limits(scene.Rule, test.To)).Distinct().Order().ToList();
        var cells = Cut(limits).Select(cell => cell.Intersect(bounds)).Where(cell => !cell.IsEmpty).ToList();
        return cells.Count == 1 && known is Known.Number { Spread.AsRead.IsPoint: true } ? [known]
            : [.. cells.Select(cell => new Known.Number(Spread.Within(cell)))];
    }

    private static IEnumerable<Rational> Limits(Rule rule, Operand to) => to switch
    {
        Operand.Fixed number => [number.Quantity.Value],
        Operand.Limit => rule.Versions.Select(version => version.Limit).OfType<Quantity>().Select(limit => limit.Value),
        _ => [],
    };

    private static IEnumerable<Interval> Cut(IReadOnlyList<Rational> limits)
    {
        Rational? below = null;
        foreach (var limit in limits)
        {
            yield return new Interval(below, limit, LoOpen: true, HiOpen: true);
            yield return Interval.At(limit);
            below = limit;
        }

        yield return new Interval(below, null, LoOpen: true);
    }
}
