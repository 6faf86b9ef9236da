using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>
/// One number held against another, by every way it can be had. Yes or No by any way is Yes or No; ways that contradict each
/// other make it Unknown, to be read again; an Unknown hangs on the way with the fewest blanks.
/// </summary>
internal sealed class Comparing(Evaluation evaluation, Condition.Compare test, Phase phase)
{
    private bool IsStrict => test.By is Comparison.Over or Comparison.Under;

    private bool IsFloor => test.By is Comparison.AtLeast or Comparison.Over;

    private Levels Levels => evaluation.Scene.Surroundings!.Levels;

    public Answer Of(PartState self)
    {
        var state = evaluation.Scene.Find(test.Path, self);
        if (NotPlain(state) is { } unplain)
        {
            return unplain;
        }

        var fact = state.Facts[test.Path.Reading.Name];
        if (evaluation.World.Of(fact, evaluation.OnPaper) is Known.Absent || IsOnNoDatum(out var answer, state))
        {
            return Evaluation.NotThere(phase);
        }

        if (answer is not null)
        {
            return answer;
        }

        IReadOnlyList<Way> against;
        Fact? other = null;
        if (test.To is Operand.Of to)
        {
            var second = evaluation.Scene.Find(to.Path, self);
            other = second.Facts[to.Path.Reading.Name];
            if (NotPlain(second) is { } unplainSecond)
            {
                return unplainSecond;
            }

            if (evaluation.World.Of(other, evaluation.OnPaper) is Known.Absent)
            {
                return Evaluation.NotThere(phase);
            }

            against = WaysOf(other);
        }
        else
        {
            against = [new Way(Spread.Exactly(Fixed().Value), test.To.Datum, [])];
        }

        var ways = Height(fact, other) is { } straight
            ? straight
            : Held(WaysOf(fact), against);
        return Fold(ways, state, fact);
    }

    /// <summary>A reading that tells a datum's level is had by every way from the datum it is held against.</summary>
    private List<Held>? Height(Fact fact, Fact? other)
    {
        if (fact.Kind.Lifts is not { } lifts || other is not null || test.To.Datum is not { } datum)
        {
            return null;
        }

        var limit = Spread.Exactly(Fixed().Value);
        return [.. Levels.Between(datum, lifts).Select(way => new Held(
            Slack(way.Given(evaluation.OnPaper), limit), limit,
                [.. way.Steps.Where(s => s.Step.Fact is not null)
                .Select(s => (s.Step.Fact!, s.Up == IsFloor ? 1 : -1))]))];
    }

    private Quantity Fixed() => test.To is Operand.Fixed number ? number.Quantity : evaluation.Limit!.Value;

    private Answer? NotPlain(PartState state) => evaluation.World.Presence(state) switch
    {
        Tri.No => Evaluation.NotThere(phase),
        Tri.Unknown => Evaluation.MayBeThere(state, phase),
        _ => null,
    };

    /// <summary>True: the datum belongs to a part that is not on this job. An answer: nobody knows whether it is.</summary>
    private bool IsOnNoDatum(out Answer? answer, PartState of)
    {
        answer = null;
        if (test.To.Datum is not { } datum || !Levels.Owners.TryGetValue(datum, out var owner) || owner.Part == of.Part)
        {
            return false;
        }

        answer = owner.Exists == Tri.Unknown ? Evaluation.MayBeThere(owner, phase) : null;
        return owner.Exists == Tri.No;
    }

    private List<Way> WaysOf(Fact fact)
    {
        var ways = new List<Way>();
        for (var one = fact; one is not null; one = one.Also)
        {
            var known = evaluation.World.Of(one, evaluation.OnPaper);
            var spread = known is Known.Number number ? number.Spread
                : one.Kind.Least is { } least ? Spread.Within(Interval.AtLeast(least.Value))
                : Spread.Everything;
            ways.Add(new Way(spread, (known as Known.Number)?.Datum ?? (one.Kind.Is == Form.Height ? one.Kind.From : null), [one]));
            if (evaluation.World.Settles(one))
            {
                break;
            }
        }

        return ways;
    }

    private List<Held> Held(List<Way> ways, IReadOnlyList<Way> against)
    {
        var held = new List<Held>(ways.Count * against.Count);
        foreach (var own in ways)
        {
            foreach (var other in against)
            {
                if (own.Datum is null || other.Datum is null)
                {
                    held.Add(new Held(Slack(own.Spread, other.Spread), other.Spread, Signed(own.Facts, other.Facts, [])));
                    continue;
                }

                foreach (var way in Levels.Between(own.Datum, other.Datum))
                {
                    var limit = other.Spread + way.Given(evaluation.OnPaper);
                    held.Add(new Held(Slack(own.Spread, limit), limit, Signed(own.Facts, other.Facts, way.Steps)));
                }
            }
        }

        return held;
    }

    private Spread Slack(Spread own, Spread limit) => IsFloor ? own - limit : limit - own;

    private List<(Fact, int)> Signed(IReadOnlyList<Fact> own, IReadOnlyList<Fact> other, IReadOnlyList<(LevelStep Step, bool Up)> steps)
    {
        var sign = IsFloor ? 1 : -1;
        var signed = new List<(Fact, int)>(own.Count + other.Count + steps.Count);
        foreach (var fact in own)
        {
            signed.Add((fact, sign));
        }

        foreach (var fact in other)
        {
            signed.Add((fact, -sign));
        }

        foreach (var (step, up) in steps)
        {
            if (step.Fact is { } fact)
            {
                signed.Add((fact, up ? -sign : sign));
            }
        }

        return signed;
    }

    private Answer Fold(List<Held> ways, PartState state, Fact fact)
    {
        if (ways.Count == 1 && ways[0].Test(IsStrict, evaluation.AsRead) is not Tri.Unknown and var only)
        {
            return new Answer(only, [], [Made(only, ways[0], state, fact)]);
        }

        return Folded(ways, state, fact);
    }

    private Answer Folded(List<Held> ways, PartState state, Fact fact)
    {
        var judged = ways.Select(way => (Way: way, Answer: way.Test(IsStrict, evaluation.AsRead))).ToList();
        var (yes, no) = (judged.Any(j => j.Answer == Tri.Yes), judged.Any(j => j.Answer == Tri.No));
        if (yes != no)
        {
            var deciding = judged.First(j => j.Answer == (yes ? Tri.Yes : Tri.No)).Way;
            return new Answer(yes ? Tri.Yes : Tri.No, [], [Made(yes ? Tri.Yes : Tri.No, deciding, state, fact)]);
        }

        if (yes)
        {
            var hangs = judged.SelectMany(j => j.Way.Facts).Select(f => Evaluation.HangOn(f.Fact, phase, near: true)).Distinct();
            return new Answer(Tri.Unknown, [.. hangs], [Made(Tri.Unknown, ways[0], state, fact)]);
        }

        // No way at all can only be where no datum joins the two: then the reading itself is what is missing.
        var open = judged.Select(j => (j.Way, Hangs: j.Way.Hangs(evaluation, phase, IsStrict)))
            .OrderBy(one => one.Hangs.Count(hang => hang.Fact is { IsBlank: true }))
            .ThenBy(one => one.Hangs.Count)
            .FirstOrDefault();
        return open.Way is null
            ? Answer.Unknown(Evaluation.HangOn(fact, phase, near: false))
            : new Answer(Tri.Unknown, open.Hangs, [Made(Tri.Unknown, open.Way, state, fact)]);
    }

    private Measured Made(Tri answer, Held way, PartState state, Fact fact) =>
        new(test, state.Part, answer, fact, test.To is Operand.Of ? null : Fixed(), test.To.Datum,
        way.Limit, way.Slack, [.. way.Facts.Select(f => new CountedFact(f.Fact, f.Sign))]);

    private sealed record Way(Spread Spread, string? Datum, IReadOnlyList<Fact> Facts);
}
