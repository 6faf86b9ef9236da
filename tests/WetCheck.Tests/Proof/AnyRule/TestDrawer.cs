using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Draws tests of a reading: few readings and few limits for one rule, so that its conditions meet on the same facts.</summary>
internal sealed class TestDrawer(Vocabulary vocabulary, IReadOnlyList<Limit> limits, Dice dice)
{
    private const int Readings = 4;
    private readonly Dictionary<PartKind, IReadOnlyList<Model.Path>> _paths = [];
    private readonly Dictionary<ReadingKind, IReadOnlyList<Quantity>> _numbers = [];
    private int _line;

    /// <summary>A new line for everything, so that no two conditions are the same.</summary>
    public At At() => new("drawn.yaml", ++_line, 1);

    /// <param name="limit">The measure of the limit of the rule's versions; null: it has none.</param>
    public Condition Of(PartKind kind, Measure? limit, bool conclusions) => dice.Next(0, 19) switch
    {
        0 or 1 or 2 => Code(),
        3 => new Condition.MethodIs([dice.Pick(vocabulary.Methods).Name], At()),
        4 when kind.Places.Count > 0 => new Condition.PlaceIs(Some(kind.Places.Select(place => place.Name)), At()),
        5 when conclusions && Conclusion() is { } path => new Condition.Is(path, dice.Chance(0.8) ? ["yes"] : ["no"], At()),
        _ => Read(dice.Pick(Paths(kind)), limit),
    };

    private Condition Read(Model.Path path, Measure? limit)
    {
        if (path.Reading.Is == Form.Choice)
        {
            return new Condition.Is(path, Some(path.Reading.Choices.Select(choice => choice.Key)), At());
        }

        var by = dice.Pick(Enum.GetValues<Comparison>());
        var datum = path.Reading.Is == Form.Height ? dice.Pick(vocabulary.Datums).Name : null;
        return dice.Chance(0.15) && Other(path) is { } other ? new Condition.Compare(path, by, new Operand.Of(other), At())
            : limit == path.Reading.Measure || (limit == Measure.Length && datum is not null)
                ? new Condition.Compare(path, by, new Operand.Limit(datum), At())
                : new Condition.Compare(path, by, new Operand.Fixed(Number(path.Reading), datum), At());
    }

    public Quantity Number(ReadingKind reading)
    {
        if (!_numbers.TryGetValue(reading, out var numbers))
        {
            var named = limits.Where(limit => limit.Reading.Measure == reading.Measure && limit.Reading.Is == reading.Is
                && limit.Number is not null).Select(limit => limit.Number!.Value).ToList();
            _numbers[reading] = numbers =
                named.Count > 0 ? [dice.Pick(named), dice.Pick(named)]
                : [new Quantity(reading.Measure ?? Measure.Length, dice.Next(0, 4), Model.Unit.Inch)];
        }

        return dice.Pick(numbers);
    }

    private IReadOnlyList<Model.Path> Paths(PartKind kind)
    {
        if (!_paths.TryGetValue(kind, out var paths))
        {
            var own = kind.Readings.Where(IsTested).Select(reading => new Model.Path(null, reading));
            var others = vocabulary.Kinds.Where(other => other.Many == Many.One && other != kind)
                .SelectMany(other => other.Readings.Where(IsTested).Select(reading => new Model.Path(other.Name, reading)));
            _paths[kind] = paths = [.. dice.Shuffled(own).Take(Readings - 1), .. dice.Shuffled(others).Take(Readings - 1)];
        }

        return paths;
    }

    private static bool IsTested(ReadingKind reading) =>
        reading is { AskedBy: null, Is: Form.Choice or Form.Amount or Form.Height or Form.Fall };

    private Model.Path? Other(Model.Path path) => _paths.Values.SelectMany(paths => paths)
        .FirstOrDefault(other => other != path && other.Kind is not null
            && other.Reading.Measure == path.Reading.Measure && path.Reading.Is != Form.Choice
            && other.Reading.Is == path.Reading.Is);

    private Model.Path? Conclusion() => vocabulary.Kinds.Where(kind => kind.Many == Many.One)
        .SelectMany(kind => kind.Readings.Where(reading => reading.Is == Form.Conclusion)
            .Select(reading => new Model.Path(kind.Name, reading)))
        .ToList() is { Count: > 0 } all ? dice.Pick(all) : null;

    private Condition.CodeIs Code()
    {
        var discipline = dice.Pick(vocabulary.Disciplines);
        var ranges = Enumerable.Range(0, dice.Next(1, 2)).Select(_ => dice.Next(0, 2) switch
        {
            0 => new CodeRange(dice.Pick(discipline.Families).Name),
            1 => new CodeRange(dice.Pick(discipline.Families).Name, From: dice.Pick([2009, 2015, 2021])),
            _ => new CodeRange(dice.Pick(discipline.Families).Name, To: dice.Pick([2006, 2014, 2020])),
        });
        return new Condition.CodeIs(discipline.Name, [.. ranges], At());
    }

    private List<string> Some(IEnumerable<string> of)
    {
        var all = dice.Shuffled(of);
        return [.. all.Take(dice.Next(1, Math.Max(1, all.Count - 1)))];
    }
}
