using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Draws which parts there are, and each reading of each of them.</summary>
internal sealed class PartDrawer(Vocabulary vocabulary, Wishes wishes, NumberDrawer numbers, FloorDrawer floor, Dice dice)
{
    private readonly List<TruePart> _parts = [];
    private readonly Dictionary<string, bool> _there = new(StringComparer.Ordinal);
    private Rational _halfCurb = 0;
    private TrueValue.Sides? _size;
    private TrueValue.Spot? _drain;
    private Rational? _rim;
    private IReadOnlyDictionary<string, Rational>? _corners;
    private bool? _goodTiles;

    public IReadOnlyList<TruePart> Draw(Method method, IReadOnlyDictionary<string, Rational> levels)
    {
        foreach (var kind in vocabulary.Kinds)
        {
            foreach (var (place, present) in Places(kind, method))
            {
                _parts.Add(new TruePart(kind, place, present, present ? Values(kind, place, levels) : new Dictionary<string, TrueValue>()));
            }
        }

        return _parts;
    }

    /// <summary>Some of this kind may be there: of one alone, whether it is.</summary>
    private bool IsThere(PartKind kind, Method method)
    {
        if (!_there.TryGetValue(kind.Name, out var there))
        {
            there = !method.RulesOut.Contains(kind.Name)
                && (kind.Above is null || IsThere(vocabulary.Kind(kind.Above)!, method))
                && (kind.Many != Many.One || IsSure(kind, method) || dice.Chance(wishes.Kinds.Contains(kind.Name) ? 0.95 : 0.7));
            _there[kind.Name] = there;
        }

        return there;
    }

    /// <summary>An average wants three tiles, what stands behind wants a layer in front.</summary>
    private int Members(PartKind kind) => (wishes.Kinds.Contains(kind.Name), kind.Name, kind.Many) switch
    {
        (true, "lifted tile", _) => dice.Next(2, 6),
        (true, _, Many.Ordered) => dice.Next(3, 5),
        (true, _, _) => dice.Next(1, 3),
        _ => dice.Next(0, 3),
    };

    private static bool IsSure(PartKind kind, Method method) => method.Has.Contains(kind.Name) || !kind.MayBeAbsent;

    private IEnumerable<(Place? Place, bool Present)> Places(PartKind kind, Method method)
    {
        var there = IsThere(kind, method);
        return kind.Many switch
        {
            Many.One => [(null, there)],
            Many.PerPlace =>
                kind.Places.Select(place =>
                ((Place?)place, there && !method.Never(place) && (IsSure(kind, method) || dice.Chance(0.7)))),
            _ => Enumerable.Range(0, there ? Members(kind) : 0)
                .Select(_ => (kind.Places.Count > 0 ? dice.Pick([.. kind.Places.Where(place => !method.Never(place))]) : null, true)),
        };
    }

    private Dictionary<string, TrueValue> Values(PartKind kind, Place? place, IReadOnlyDictionary<string, Rational> levels)
    {
        var values = new Dictionary<string, TrueValue>(StringComparer.Ordinal);
        // The levels of a floor are no single value: the tests of LevelReadings draw those.
        foreach (var reading in kind.Readings.Where(reading => !reading.Derived && reading.Is is not (Form.Conclusion or Form.Levels)))
        {
            values[reading.Name] = Value(kind, place, reading, levels);
        }

        return values;
    }

    private TrueValue Value(PartKind kind, Place? place, ReadingKind reading, IReadOnlyDictionary<string, Rational> levels)
    {
        switch (kind.Name, reading.Name)
        {
            case ("shower", "size"):
                // The half that the depth is short of the clear depth by; the curb itself is drawn with it.
                _halfCurb = dice.Between(0, 3, 16);
                return _size = floor.Size(_halfCurb, dice);
            case ("shower", "drain at"):
                return _drain = floor.Drain(_size!);
            case ("floor", "rim"):
                _rim = floor.Rim(_size!, _drain!);
                _corners = _rim is null ? floor.Corners(vocabulary.Kind("floor corner")!, _size!, _drain!) : null;
                return _rim is { } rim ? new TrueValue.Amount(rim) : new TrueValue.Gone();
            case ("floor facet", "fall") when _rim is { } level:
                return FloorDrawer.Facet(place!.Name, level, _size!, _drain!);
            case ("floor valley", "fall") when _rim is { } level:
                return FloorDrawer.Valley(place!.Name, level, _size!, _drain!);
            case ("floor facet", "fall") when _corners is { } corners:
                return FloorDrawer.Facet(place!.Name, FloorDrawer.AtTheFoot(place.Name, corners, _size!, _drain!), _size!, _drain!);
            case ("floor valley", "fall") when _corners is { } corners:
                return FloorDrawer.Valley(place!.Name, corners[place.Name], _size!, _drain!);
            case ("floor corner", "height"):
                return (_rim ?? _corners?.GetValueOrDefault(place!.Name)) is { } height ? new TrueValue.Amount(height)
                    : new TrueValue.Gone();
            case ("curb", "width"):
                return new TrueValue.Amount(_halfCurb * 2);
            case ("lifted tile", "coverage"):
                return new TrueValue.Amount(floor.Coverage(_goodTiles ??= dice.Chance(0.5)));
        }

        if (reading.Lifts is null && dice.Chance(0.02))
        {
            return new TrueValue.Gone();
        }

        return reading.Is switch
        {
            Form.Choice => new TrueValue.Chosen(Choice(kind, reading)),
            Form.Height => new TrueValue.Level(reading.Lifts is { } datum ? levels[datum] : numbers.Level(kind, reading, levels)!.Value),
            Form.Fall => floor.Free(kind, reading),
            _ => new TrueValue.Amount(numbers.Amount(kind, reading)),
        };
    }

    private string Choice(PartKind kind, ReadingKind reading)
    {
        var all = reading.Choices.Select(choice => choice.Key).ToList();
        var wished = wishes.Of(kind, reading).Where(wish => wish.Leaf is Condition.Is).ToList();
        if (wished.Count > 0 && dice.Chance(0.85))
        {
            var wish = dice.Pick(wished);
            var fit = all.Where(key => ((Condition.Is)wish.Leaf).OneOf.Contains(key) == wish.Wanted).ToList();
            return dice.Pick(fit.Count > 0 ? fit : all);
        }

        return dice.Pick(all);
    }
}
