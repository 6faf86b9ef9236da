using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>
/// All values that tell a reading's answers apart: each choice; of numbers, for every limit that a rule names, values beyond the
/// tool's band on either side, at its edge, inside it and on the limit; and the true one.
/// </summary>
internal sealed class Values(RuleBook book, TrueRoom room, Dice dice)
{
    private const int Most = 16;
    private static readonly Rational[] s_areas = [900, 1024, 1300];
    private static readonly Rational[] s_sides = [24, 25, 30, 32, 36, 52, 60];
    private readonly IReadOnlyList<Limit> _limits = Studied.Of(book).Limits;
    private readonly Tape _tape = new(room, dice);

    public IReadOnlyList<Reading> Of(PartKind kind, ReadingKind reading, TrueValue? truth)
    {
        Reading[] true_ = truth is null ? [] : [_tape.Exact(truth, reading, null)];
        var none = reading.Lifts is null && reading.Is is Form.Choice or Form.Amount
            ? [Tape.Of(new ReadingValue.OfNone())] : Array.Empty<Reading>();
        return reading.Is switch
        {
            Form.Choice => [.. reading.Choices.Select(choice => Tape.Of(new ReadingValue.OfChoice(choice.Key))), .. none],
            Form.Size => [.. true_, .. Sizes()],
            Form.Outline or Form.Levels => [],
            Form.Point => [.. true_, .. Points()],
            Form.Fall => [.. true_, .. Few(Falls(kind, reading)).Select(rise => Tape.Of(new ReadingValue.OfFall(rise, 36, Unit.Inch)))],
            Form.Height => [.. true_, .. Few(Heights(kind, reading, truth)).Select(number => Number(reading, number))],
            _ => [.. true_, .. none, .. Few(Amounts(kind, reading)).Select(number => Number(reading, number))],
        };
    }

    private Reading Number(ReadingKind reading, Rational number) => _tape.Exact(
        reading.Is == Form.Height ? new TrueValue.Level(number + room.Levels[reading.From!]) : new TrueValue.Amount(number), reading, null);

    private IEnumerable<Rational> Amounts(PartKind kind, ReadingKind reading)
    {
        var named = Direct(kind, reading).Concat((kind.Name, reading.Name) switch
        {
            ("curb", "width") => HalfCurbs(),
            ("floor", "rim") => Rims(),
            ("lifted tile", "coverage") => Coverages(),
            _ => [],
        }).ToList();
        var most = (kind.Name, reading.Name) == ("curb", "width") ? 6 : reading.Measure == Measure.Percent ? (Rational)100 : 1_000_000;
        var least = reading.Measure == Measure.Temperature ? -1_000_000 : 0;
        return named.SelectMany(number => Around(number, reading)).Concat(least == 0 ? [(Rational)0] : [])
            .Where(number => number >= least && number <= most);
    }

    /// <summary>What rules hold this reading against, another reading's true number too, and what they hold against this one.</summary>
    private IEnumerable<Rational> Direct(PartKind kind, ReadingKind reading) => _limits
        .Where(limit => limit.Kind == kind && limit.Reading == reading)
        .Select(limit => limit.Number?.Value ?? True(limit.Other!.Kind!, limit.Other.Reading.Name))
        .Concat(_limits.Where(limit => limit.Other is { } other && other.Kind == kind.Name && other.Reading == reading)
            .Select(limit => True(limit.Kind.Name, limit.Reading.Name)))
        .OfType<Rational>();

    private Rational? True(string kind, string reading) =>
        room.Of(kind).Select(part => part.Values.GetValueOrDefault(reading)).OfType<TrueValue.Amount>().FirstOrDefault()?.Number;

    /// <summary>A height is told by its distance from the level asked; what decides is its distance from the limit's.</summary>
    private IEnumerable<Rational> Heights(PartKind kind, ReadingKind reading, TrueValue? truth)
    {
        var at = (truth as TrueValue.Level)?.At ?? room.Levels[reading.From!];
        var mine = at - room.Levels[reading.From!];
        var criticals = _limits.Where(limit => limit.Datum is not null).SelectMany(limit =>
        {
            var wanted = room.Levels[limit.Datum!] + limit.Number!.Value.Value;
            return limit.Kind == kind && limit.Reading == reading ? [wanted - room.Levels[reading.From!]]
                : reading.Lifts is null ? []
                : room.Of(limit.Kind.Name).Select(part => part.Values.GetValueOrDefault(limit.Reading.Name))
                    .OfType<TrueValue.Level>().Distinct()
                    .SelectMany(level => new[] { mine + (level.At - wanted), mine - (level.At - wanted) });
        });
        var least = reading.Least?.Value ?? -1_000_000;
        return criticals.SelectMany(number => Around(number, reading)).Append(reading.Least?.Value ?? mine - 12)
            .Append(mine + 12).Where(number => number >= least);
    }

    private IEnumerable<Rational> Falls(PartKind kind, ReadingKind reading) =>
        Direct(kind, reading).SelectMany(slope => Around(slope * 36, reading));

    private IEnumerable<Rational> HalfCurbs() => Size is not { } size ? [3]
        : [3, .. s_sides.Select(side => (side - size.Depth) * 2), .. s_areas.Select(area => ((area / size.Width) - size.Depth) * 2)];

    private IEnumerable<Rational> Rims() => Size is not { } size || Drain is not { } drain ? []
        : _limits.Where(limit => limit.Kind.Name == "floor facet" && limit.Number is not null)
            .Select(limit => limit.Number!.Value.Value).Distinct()
            .SelectMany(slope =>
                new[] { drain.FromLeft, drain.FromEntry, size.Width - drain.FromLeft, size.Depth - drain.FromEntry }
                .Select(run => slope * run));

    private IEnumerable<Rational> Coverages()
    {
        var all = room.Of("lifted tile").Select(tile => tile.Values["coverage"]).OfType<TrueValue.Amount>()
            .Select(amount => amount.Number).ToList();
        var sum = all.Aggregate((Rational)0, (a, b) => a + b);
        return all.Select(mine => (95 * all.Count) - (sum - mine)).Append(100);
    }

    private IEnumerable<Reading> Sizes() =>
        s_sides.SelectMany(width => s_sides.Select(depth => (width, depth))).Where(_ => dice.Chance(0.4))
        .Select(size => Tape.Of(new ReadingValue.OfSize(size.width, size.depth, Between.Finished, Unit.Inch)));

    private IEnumerable<Reading> Points() => Size is not { } size ? [] :
        from x in Enumerable.Range(2, 3)
        from y in Enumerable.Range(2, 2)
        select Tape.Of(new ReadingValue.OfPoint(size.Width / x, size.Depth / y, Unit.Inch));

    private TrueValue.Sides? Size => room.Of("shower").Single().Values.GetValueOrDefault("size") as TrueValue.Sides;

    private TrueValue.Spot? Drain => room.Of("shower").Single().Values.GetValueOrDefault("drain at") as TrueValue.Spot;

    private IEnumerable<Rational> Around(Rational number, ReadingKind reading)
    {
        var half = reading.Tool?.HalfMark(reading.Is is Form.Fall or Form.Height ? Measure.Length : reading.Measure
            ?? Measure.Length, room.Metric) ?? 0;
        Rational[] by = half == 0 ? [-10, -1, 0, 1, 10] : [half * -8, half * -3, -half, -half / 2, 0, half, half * 8];
        return by.Select(offset => number + offset);
    }

    private List<Rational> Few(IEnumerable<Rational> numbers)
    {
        var all = numbers.Distinct().Order().ToList();
        return all.Count <= Most ? all : [.. dice.Shuffled(all.Skip(1).SkipLast(1)).Take(Most - 2), all[0], all[^1]];
    }
}
