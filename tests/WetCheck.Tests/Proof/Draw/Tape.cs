using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Takes readings of a true value: as it is, or within what the tool can tell.</summary>
internal sealed class Tape(TrueRoom room, Dice dice)
{
    private const string File = "drawn.job.yaml";
    private Between _between = Between.Finished;

    private Unit Length => room.Metric ? Unit.Millimetre : Unit.Inch;

    /// <summary>All readings of one fact: one with the tool's error, or two of which the last is true.</summary>
    /// <param name="datum">Of a height: the level it is read from.</param>
    public IReadOnlyList<Reading> Read(TrueValue value, ReadingKind kind, string? datum, bool twice)
    {
        _between = dice.Pick([Between.Finished, Between.Finished, Between.Finished, Between.ToStuds, Between.NotSaid, Between.Overall]);
        var tool = Tool(kind);
        var half = (tool ?? kind.Tool)?.HalfMark(kind.Measure ?? Measure.Length, room.Metric) ?? 0;
        return twice && value is not TrueValue.Slope { IsRounded: true }
            ? [Of(Value(value, kind, datum, () => Slip(half)), tool), Of(Value(value, kind, datum, () => 0), tool)]
            : [Of(Value(value, kind, datum, () => Slip(half)), tool)];
    }

    /// <summary>One reading, as it truly is.</summary>
    public Reading Exact(TrueValue value, ReadingKind kind, string? datum, bool planned = false) =>
        Of(Value(value, kind, datum, () => 0), null, planned);

    /// <summary>Over something, or under something.</summary>
    public Reading Bound(TrueValue value, ReadingKind kind, string? datum)
    {
        var number = ((ReadingValue.OfAmount)Value(value, kind, datum, () => 0)).Amount.Lo!.Value;
        var by = Offsets.Draw(kind.Measure ?? Measure.Length, room.Metric, up: true, orZero: false, dice);
        var bound = dice.Chance(0.5) ? new Interval(number - by, null, LoOpen: true) : new Interval(null, number + by, HiOpen: true);
        return Of(new ReadingValue.OfAmount(bound, UnitOf(kind), datum, Exact: true), null);
    }

    public static Reading Of(ReadingValue value, Tool? tool = null, bool planned = false) =>
        new(value, planned, "", new At(File, 1, 1), tool);

    private ReadingValue Value(TrueValue value, ReadingKind kind, string? datum, Func<Rational> slip) => value switch
    {
        TrueValue.Gone => new ReadingValue.OfNone(),
        TrueValue.Chosen chosen => new ReadingValue.OfChoice(chosen.Key),
        TrueValue.Amount amount => Amount(kind, amount.Number, null, slip()),
        TrueValue.Level level => Amount(kind, level.At - room.Levels[datum ?? kind.From!], datum, slip()),
        TrueValue.Slope slope => Fall(slope, slip()),
        TrueValue.Spot spot => new ReadingValue.OfPoint(spot.FromLeft + slip(), spot.FromEntry + slip(), Length),
        TrueValue.Sides sides => Size(sides, slip),
        _ => throw new InvalidOperationException(value.ToString()),
    };

    private ReadingValue.OfAmount Amount(ReadingKind kind, Rational number, string? datum, Rational slip)
    {
        // A slip past nature's bound would be a reading that nobody can take.
        var read = kind.Least is { } least && (datum is null || datum == kind.From)
            ? Rational.Max(least.Value, number + slip) : number + slip;
        return new ReadingValue.OfAmount(Interval.At(read), UnitOf(kind), datum);
    }

    private ReadingValue.OfFall Fall(TrueValue.Slope slope, Rational slip)
    {
        // Read over a distance, at a foot's end, or by ratio, where only so much is lost as nobody reads.
        return slope.IsRounded || dice.Chance(0.6) ? new ReadingValue.OfFall(slope.Rise + (slope.IsRounded ? 0 : slip), slope.Run, Length)
            : dice.Chance(0.5) ? new ReadingValue.OfFall((slope.Rise / slope.Run * 12) + slip, 12, Unit.InchPerFoot)
            : new ReadingValue.OfFall(slope.Rise, slope.Run, Unit.PercentFall, ByRatio: true);
    }

    private ReadingValue.OfSize Size(TrueValue.Sides sides, Func<Rational> slip)
    {
        var more = _between switch { Between.Finished => 0, Between.Overall => sides.Overall, _ => sides.ToStuds };
        return new ReadingValue.OfSize(sides.Width + more + slip(), sides.Depth + more + slip(), _between, Length, sides.Floor);
    }

    private Rational Slip(Rational half) => dice.Next(0, 3) switch
    {
        0 => half * dice.Pick([(Rational)1, -1]),
        1 => half / 2 * dice.Pick([(Rational)1, -1]),
        _ => 0,
    };

    /// <summary>Another tool than its question's, now and then.</summary>
    private Tool? Tool(ReadingKind kind) => kind.Tool is { Name: "tape" } tape && dice.Chance(0.1) ? Other(tape) : null;

    private static Tool Other(Tool tape) => tape with
    {
        Name = "rule",
        Marks = tape.Marks.ToDictionary(mark => mark.Key, mark => mark.Value with { Value = mark.Value.Value / 2 }),
    };

    private Unit UnitOf(ReadingKind kind) => (kind.Measure ?? Measure.Length) switch
    {
        Measure.Length => Length,
        Measure.Area => Unit.SquareInch,
        Measure.Duration => Unit.Minute,
        Measure.Temperature => Unit.Fahrenheit,
        Measure.Percent => Unit.Percent,
        Measure.Slope => Unit.RiseOverRun,
        _ => Unit.Each,
    };
}
