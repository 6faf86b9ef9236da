using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Draws true numbers, mostly at and around what the rules name for them.</summary>
internal sealed class NumberDrawer(RuleBook book, Wishes wishes, bool metric, Dice dice)
{
    private readonly ILookup<(string Kind, string Reading), Limit> _limits = Studied.Of(book).LimitsOf;
    private readonly Dictionary<(string, string), Rational> _drawn = [];

    /// <summary>An amount or a slope of a part.</summary>
    public Rational Amount(PartKind kind, ReadingKind reading)
    {
        var measure = reading.Measure ?? Measure.Length;
        var aimed = dice.Chance(0.85) ? Wished(kind, reading, measure) : null;
        var number = aimed ?? (dice.Chance(0.8) ? AtALimit(kind, reading, measure) : null) ?? Anywhere(reading, measure);
        number = Within(reading, measure, number);
        _drawn[(kind.Name, reading.Name)] = number;
        return number;
    }

    /// <summary>A level, in inches above where all levels count from; null where nothing it is named above is known yet.</summary>
    public Rational? Level(PartKind kind, ReadingKind reading, IReadOnlyDictionary<string, Rational> levels)
    {
        var wished =
            wishes.Of(kind, reading)
            .Where(wish => wish.Leaf is Condition.Compare { To.Datum: { } datum } && levels.ContainsKey(datum))
            .ToList();
        if (wished.Count > 0 && dice.Chance(0.85))
        {
            var wish = dice.Pick(wished);
            var test = (Condition.Compare)wish.Leaf;
            return levels[test.To.Datum!] + NumberOf(test, wish.Limit)!.Value + Past(test.By, wish.Wanted, Measure.Length);
        }

        var limits = _limits[(kind.Name, reading.Name)].Where(limit => limit.Datum is { } datum && levels.ContainsKey(datum)).ToList();
        if (limits.Count > 0 && dice.Chance(0.8))
        {
            var limit = dice.Pick(limits);
            return levels[limit.Datum!] + limit.Number!.Value.Value + Offsets.Draw(Measure.Length, metric, null, orZero: true, dice);
        }

        return levels.TryGetValue(reading.From!, out var from) ? from + Anywhere(reading, Measure.Length) : null;
    }

    /// <summary>Some limit that the rules name for a reading; null where they name none.</summary>
    public Rational? AnyLimit(string kind, string reading) =>
        _limits[(kind, reading)].Where(limit => limit.Number is not null).Select(limit => limit.Number!.Value.Value)
            .ToList() is { Count: > 0 } all ? dice.Pick(all) : null;

    private Rational? Wished(PartKind kind, ReadingKind reading, Measure measure)
    {
        var all = wishes.Of(kind, reading).Where(wish => wish.Leaf is Condition.Compare).ToList();
        if (all.Count == 0)
        {
            return null;
        }

        var wish = dice.Pick(all);
        var test = (Condition.Compare)wish.Leaf;
        return NumberOf(test, wish.Limit) + Past(test.By, wish.Wanted, measure);
    }

    private Rational? AtALimit(PartKind kind, ReadingKind reading, Measure measure)
    {
        var direct = _limits[(kind.Name, reading.Name)].Select(limit => limit.Number?.Value ?? Drawn(limit.Other!));
        var held = _limits.SelectMany(group => group)
            .Where(limit => limit.Other is { } other && other.Kind == kind.Name && other.Reading.Name == reading.Name)
            .Select(limit => Drawn(new Model.Path(limit.Kind.Name, limit.Reading)));
        var all = direct.Concat(held).OfType<Rational>().ToList();
        return all.Count == 0 ? null : dice.Pick(all) + Offsets.Draw(measure, metric, null, orZero: true, dice);
    }

    private Rational? NumberOf(Condition.Compare test, Quantity? limit) => test.To switch
    {
        Operand.Fixed number => number.Quantity.Value,
        Operand.Limit => limit?.Value,
        Operand.Of other => Drawn(other.Path),
        _ => null,
    };

    private Rational? Drawn(Model.Path path) =>
        path.Kind is { } kind && _drawn.TryGetValue((kind, path.Reading.Name), out var number) ? number : null;

    private Rational Past(Comparison by, bool wanted, Measure measure)
    {
        var strict = by is Comparison.Over or Comparison.Under;
        var floor = by is Comparison.AtLeast or Comparison.Over;
        return Offsets.Draw(measure, metric, up: floor == wanted, orZero: wanted != strict, dice);
    }

    private Rational Anywhere(ReadingKind reading, Measure measure) =>
        reading.Believable is { } range ? dice.Between(range.Least.Value, range.Most.Value, 64)
        : dice.Between(measure == Measure.Length && reading.Is == Form.Height ? -4 : 0, measure == Measure.Slope ? 1 : 60, 64);

    private static Rational Within(ReadingKind reading, Measure measure, Rational number)
    {
        var least = reading.Least?.Value ?? (measure == Measure.Temperature ? number : 0);
        var most = measure == Measure.Percent ? 100 : number;
        return Rational.Max(least, Rational.Min(most, number));
    }
}
