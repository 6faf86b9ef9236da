using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Draws a true level for every datum, from one to the next along the readings that tell them. Nature's bounds are kept.</summary>
internal sealed class LevelDrawer(Vocabulary vocabulary, NumberDrawer numbers, Dice dice)
{
    private const string Lowest = "liner at drain";
    private readonly Dictionary<string, Rational> _levels = new(StringComparer.Ordinal) { [Lowest] = 0 };
    private readonly IReadOnlyList<(PartKind Kind, ReadingKind Reading)> _lifts =
        [.. vocabulary.Kinds.SelectMany(kind => kind.Readings.Where(reading => reading.Lifts is not null)
            .Select(reading => (kind, reading)))];

    public IReadOnlyDictionary<string, Rational> Draw()
    {
        var waiting = dice.Shuffled(_lifts).ToList();
        while (waiting.Find(one => IsKnown(one.Reading.From!) != IsKnown(one.Reading.Lifts!)) is { Kind: not null } next)
        {
            waiting.Remove(next);
            _levels[IsKnown(next.Reading.From!) ? next.Reading.Lifts! : next.Reading.From!] = Within(next.Kind, next.Reading);
            Follow();
        }

        foreach (var datum in vocabulary.Datums.Where(datum => !IsKnown(datum.Name)))
        {
            _levels[datum.Name] = dice.Between(0, 3, 32);
        }

        return _levels;
    }

    private bool IsKnown(string datum) => _levels.ContainsKey(datum);

    /// <summary>Tried until every reading that both ends are known of keeps its bound.</summary>
    private Rational Within(PartKind kind, ReadingKind reading)
    {
        var (up, datum) = IsKnown(reading.From!) ? (true, reading.Lifts!) : (false, reading.From!);
        for (var tries = 0; tries < 100; tries++)
        {
            var level = up ? At(kind, reading) : _levels[reading.Lifts!] - Step(reading);
            if (_lifts.All(one => one.Reading.Least is not { } least
                || Above(one.Reading, datum, level) is not { } above || above >= least.Value))
            {
                return level;
            }
        }

        return up ? _lifts.Where(one => one.Reading.Lifts == datum && IsKnown(one.Reading.From!))
            .Max(one => _levels[one.Reading.From!] + (one.Reading.Least?.Value ?? 0))
            : _levels[reading.Lifts!] - (reading.Least?.Value ?? 0);
    }

    private Rational At(PartKind kind, ReadingKind reading)
    {
        // A rule may speak of this datum above another that is known by now.
        return dice.Chance(0.6)
            && _lifts.Where(one => one.Reading.Lifts == reading.Lifts)
            .Select(one => numbers.Level(one.Kind, one.Reading, _levels)).OfType<Rational>()
            .ToList() is { Count: > 0 } all
            ? dice.Pick(all)
            : numbers.Level(kind, reading, _levels) ?? (_levels[reading.From!] + Step(reading));
    }

    private Rational Step(ReadingKind reading) => reading.Believable is { } range
        ? dice.Between(range.Least.Value, range.Most.Value, 32)
        : dice.Between(reading.Least?.Value ?? 0, 6, 32);

    private Rational? Above(ReadingKind reading, string datum, Rational level)
    {
        var (from, to) = (reading.From == datum ? level : Known(reading.From!), reading.Lifts == datum ? level : Known(reading.Lifts!));
        return to - from;
    }

    private Rational? Known(string datum) => _levels.TryGetValue(datum, out var level) ? level : null;

    /// <summary>What stands exactly so far above another.</summary>
    private void Follow()
    {
        foreach (var step in vocabulary.Steps)
        {
            if (Known(step.Above) is { } below)
            {
                _levels[step.Datum] = below + step.Exactly.Value;
            }
        }
    }
}
