using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>Holds one rule against one part: is it OK, on what does it hang, what does the plan say. Pure.</summary>
public static class Judge
{
    /// <summary>More worlds than this is a rule that decides by too much at once.</summary>
    private const int MostWorlds = 20_000;

    public static Judgement Of(Scene scene) => Of(scene, OnPaper.Differs(scene));

    /// <param name="plans">Whether plans are looked at by themselves; where there are none they say the same again.</param>
    internal static Judgement Of(Scene scene, bool plans)
    {
        var now = Pass(scene, onPaper: false);
        var paper = plans && (now.Outcome == Outcome.Open || scene.Rule.Body is not RuleBody.Require) ? Pass(scene, onPaper: true) : now;
        return new Judgement(now.Outcome, paper.Outcome, now.Hangs, paper.Hangs, now.Sides, paper.Sides);
    }

    /// <summary>A yes or no reading that the rule fills: its condition, on a part that is there.</summary>
    public static Conclusion Conclude(Scene scene)
    {
        var now = Applies(scene, World.Real, onPaper: false);
        var paper = OnPaper.Differs(scene) ? Applies(scene, World.Real, onPaper: true) : now;
        return new Conclusion(scene.Self.Part, ((RuleBody.Conclude)scene.Rule.Body).Reading.Name, scene.Rule,
            now.Value ?? Tri.No, paper.Value ?? Tri.No, now.Hangs, paper.Hangs);
    }

    private static Passed Pass(Scene scene, bool onPaper)
    {
        if (scene.Rule.Body is not RuleBody.Require)
        {
            var applies = Applies(scene, World.Real, onPaper);
            var outcome = applies.Value switch { Tri.Yes => Outcome.Ok, Tri.Unknown => Outcome.Open, _ => Outcome.NotHere };
            return new Passed(outcome, applies.Hangs, []);
        }

        // Versions go by what was read. A reading too close to their limit may leave open what comes out the same on both sides of it.
        var axes = Axis.Of(scene, onPaper, cutBand: false);
        var read = Pass(scene, axes, onPaper);
        return read.Outcome == Outcome.Open && axes.Count > 0 && Axis.Of(scene, onPaper, cutBand: true) is var cut
            && cut.Zip(axes).Any(pair => pair.First.Cells.Count > pair.Second.Cells.Count)
            && Pass(scene, cut, onPaper) is { Outcome: not Outcome.Open } settled ? settled : read;
    }

    private static Passed Pass(Scene scene, IReadOnlyList<Axis> axes, bool onPaper)
    {
        if (axes.Count == 0)
        {
            var only = InWorld(scene, World.Real, [], onPaper);
            return new Passed(only.Outcome, only.Outcome == Outcome.Open ? [.. only.Hangs.Distinct()] : [],
                [new Side(only.InForce, [], only.Outcome, only.Tests)]);
        }

        var worlds = Worlds(axes, scene.Rule).Select(one => InWorld(scene, one.World, one.Cells, onPaper)).ToList();
        var all = Together(worlds.Select(world => world.Outcome));
        var sides = Sides(worlds);
        return all != Outcome.Open
            ? new Passed(all, [], sides)
            : new Passed(all, [.. worlds.Where(world => world.Outcome == Outcome.Open).SelectMany(world => world.Hangs)
                .Concat(axes.Where((axis, index) => Matters(axis, index, worlds)).SelectMany(axis => axis.Hang)).Distinct()], sides);
    }

    /// <summary>All Correction, or all OK or Not on this job; else open.</summary>
    private static Outcome Together(IEnumerable<Outcome> outcomes)
    {
        var seen = outcomes.Distinct().ToList();
        return seen.Count == 1 ? seen[0] : seen.All(outcome => outcome is Outcome.Ok or Outcome.NotHere) ? Outcome.Ok : Outcome.Open;
    }

    private static InWorld InWorld(Scene scene, World world, IReadOnlyList<int> cells, bool onPaper)
    {
        var applies = Applies(scene, world, onPaper);
        if (applies.Value == Tri.No)
        {
            return new InWorld(world, cells, Outcome.NotHere, [], [], []);
        }

        var inForce = InForce(scene, world, onPaper);
        if (scene.Rule.Versions.Count > 0 && inForce.Count == 0)
        {
            return new InWorld(world, cells, Outcome.NotHere, [], [], []);
        }

        var required = Requirement(scene, world, inForce, onPaper);
        var (outcome, hangs) = (applies.Value, required.Value) switch
        {
            (_, null) => (Outcome.NotHere, (IEnumerable<Hang>)[]),
            (_, Tri.Yes) => (Outcome.Ok, []),
            (Tri.Yes, Tri.No) => (Outcome.Correction, []),
            (Tri.Yes, _) => (Outcome.Open, required.Hangs),
            (_, Tri.No) => (Outcome.Open, applies.Hangs),
            _ => (Outcome.Open, applies.Hangs.Concat(required.Hangs)),
        };
        return new InWorld(world, cells, outcome, [.. hangs], inForce, required.Tests);
    }

    /// <summary>Existence is part of when: absent is No, unknown makes a Yes Unknown.</summary>
    private static Answer Applies(Scene scene, World world, bool onPaper)
    {
        var exists = world.Presence(scene.Self) switch
        {
            Tri.Yes => Answer.Yes,
            Tri.No => Answer.No,
            _ => Evaluation.MayBeThere(scene.Self, Phase.Presence),
        };
        return scene.Rule.When is { } when && exists.Value != Tri.No
            ? Answer.Least([exists, new Evaluation(scene, world, onPaper).Of(when, scene.Self, Phase.When)])
            : exists;
    }

    private static List<RuleVersion> InForce(Scene scene, World world, bool onPaper) => scene.Rule.Versions.Count == 0 ? []
        : [.. scene.Rule.Versions.Where(version => IsInForce(scene, world, version, onPaper))];

    private static bool IsInForce(Scene scene, World world, RuleVersion version, bool onPaper) =>
        version.When is null
            || new Evaluation(scene, world, onPaper, asRead: true).Of(version.When, scene.Self, Phase.When)
            .Value == Tri.Yes;

    private static Answer Requirement(Scene scene, World world, List<RuleVersion> inForce, bool onPaper)
    {
        var holds = ((RuleBody.Require)scene.Rule.Body).Holds;
        if (inForce.Count == 0)
        {
            var alone = holds is null || scene.Plan.HoldsToLimit ? Answer.Fell
                : new Evaluation(scene, world, onPaper).Of(holds, scene.Self, Phase.Require);
            return alone.Value is null ? Answer.Fell : alone;
        }

        return Requirement(scene, world, holds, inForce, onPaper);
    }

    private static Answer Requirement(Scene scene, World world, Condition? holds, List<RuleVersion> inForce, bool onPaper)
    {
        var limited = inForce.Where(version => version.Limit is not null).ToList();
        var answers = new List<Answer>();
        if (holds is not null && (limited.Count > 0 || !scene.Plan.HoldsToLimit))
        {
            // Without limits the rule's own requirement stands as it is written; with several each must be met.
            answers.AddRange((limited.Count == 0 ? [null] : limited.Select(version => version.Limit))
                .Select(limit => new Evaluation(scene, world, onPaper, limit: limit).Of(holds, scene.Self, Phase.Require)));
        }

        answers.AddRange(inForce.Where(version => version.Require is not null)
            .Select(version => new Evaluation(scene, world, onPaper, limit: version.Limit)
                .Of(version.Require!, scene.Self, Phase.Require)));
        return Answer.Least(answers);
    }

    private static IEnumerable<(World World, IReadOnlyList<int> Cells)> Worlds(IReadOnlyList<Axis> axes, Rule rule)
    {
        IEnumerable<(World World, IReadOnlyList<int> Cells)> worlds = [(World.Real, [])];
        if (axes.Aggregate(1L, (count, axis) => count * axis.Cells.Count) > MostWorlds)
        {
            throw new InvalidOperationException($"{rule.Id} decides by too many things at once: over {MostWorlds} worlds.");
        }

        return axes.Aggregate(worlds, (all, axis) =>
            all.SelectMany(one => axis.Cells.Select((cell, index) => (cell(one.World), (IReadOnlyList<int>)[.. one.Cells, index]))));
    }

    /// <summary>An axis matters where moving along it alone changes the outcome.</summary>
    private static bool Matters(Axis axis, int index, IReadOnlyList<InWorld> worlds) => axis.Cells.Count > 1 && worlds
        .GroupBy(world => string.Join(',', world.Cells.Select((cell, i) => i == index ? -1 : cell)))
        .Any(line => Together(line.Select(world => world.Outcome)) == Outcome.Open
            && line.Select(world => world.Outcome).Distinct().Count() > 1);

    private static IReadOnlyList<Side> Sides(IReadOnlyList<InWorld> worlds) => [.. worlds
        .GroupBy(world => string.Join(',', world.InForce.Select(version => version.At.ToString())))
        .Select(group => new Side(
            group.First().InForce,
            [.. group.SelectMany(world => world.World.Codes.Values).Distinct()],
            Together(group.Select(world => world.Outcome)),
            (group.FirstOrDefault(world => world.Outcome == Outcome.Correction) ?? group.First()).Tests))];

    private sealed record Passed(Outcome Outcome, IReadOnlyList<Hang> Hangs, IReadOnlyList<Side> Sides);
}
