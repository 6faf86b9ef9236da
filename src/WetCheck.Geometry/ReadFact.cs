using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>From the readings of one fact to what is known of it.</summary>
internal sealed class ReadFact(Tool? ratioTool)
{
    public Fact Of(Part part, ReadingKind kind, IReadOnlyList<Reading> readings, Sight sight)
    {
        var blank = new Fact(new FactId(part.Id, kind.Name), kind, Known.Nothing.Instance, Known.Nothing.Instance,
            IsPlanned: false, Clash: false, SaidHidden: false, ReadOnce: false, sight, Counted: null, From: [], Explained: "");
        var last = readings.LastOrDefault(reading => !reading.Planned);
        if (last is null)
        {
            return readings.Count == 0
                ? blank
                : blank with { OnPaper = ToKnown(kind, readings[^1], banded: false), IsPlanned = true, Counted = readings[^1] };
        }

        if (last.Value is ReadingValue.OfHidden)
        {
            return blank with { SaidHidden = true, Counted = last };
        }

        // A reading ends every plan of its fact. Of several the last counts, if the last two agree.
        var read = readings.Where(reading => !reading.Planned).ToList();
        var once = ToKnown(kind, last, banded: true);
        var known = read.Count == 1 ? once : Agreed(once, ToKnown(kind, read[^2], banded: true), ToKnown(kind, last, banded: false));
        return known is null
            ? blank with { Clash = true, Counted = last }
            : blank with { Now = known, OnPaper = known, ReadOnce = read.Count == 1, Counted = last };
    }

    /// <summary>The last reading without its band, if both can be true at once; else nothing.</summary>
    private static Known? Agreed(Known last, Known before, Known counted) => (last, before) switch
    {
        (Known.Number a, Known.Number b) => a.Datum != b.Datum ? null : Meet(a.Spread, b.Spread) ? counted : null,
        (Known.Pair a, Known.Pair b) => a.Between == b.Between && Meet(a.First, b.First) && Meet(a.Second, b.Second) ? counted : null,
        _ => last.Equals(before) ? counted : null,
    };

    private static bool Meet(Spread a, Spread b) => !a.Band.Intersect(b.Band).IsEmpty;

    private Known ToKnown(ReadingKind kind, Reading reading, bool banded) => reading.Value switch
    {
        ReadingValue.OfNone => Known.Absent.Instance,
        ReadingValue.OfChoice choice => new Known.OneOf(choice.Key),
        ReadingValue.OfAmount amount =>
            new Known.Number(Bounded(kind, amount.Datum, Amount(kind, reading, amount, banded)),
            Datum(kind, amount.Datum)),
        ReadingValue.OfFall fall => new Known.Number(Fall(kind, reading, fall, banded)),
        ReadingValue.OfSize size => new Known.Pair(
            Length(kind, reading, size.Width, size.Unit, banded),
            Length(kind, reading, size.Depth, size.Unit, banded),
            size.Between,
            size.Floor is { } floor ? Spread.Exactly(floor) : null),
        ReadingValue.OfPoint point => new Known.Pair(
            Length(kind, reading, point.FromLeft, point.Unit, banded),
                Length(kind, reading, point.FromEntry, point.Unit, banded), Between.NotSaid),
        ReadingValue.OfOutline outline => new Known.Corners(outline.Corners),
        ReadingValue.OfLevels levels => new Known.Levels(levels.Points, Half(kind, reading, levels.Unit, Measure.Length)),
        _ => Known.Nothing.Instance,
    };

    private static string? Datum(ReadingKind kind, string? typed) => kind.Is == Form.Height ? typed ?? kind.From : null;

    /// <summary>Nature's bound is set from the datum that is asked, and from no other.</summary>
    private static Spread Bounded(ReadingKind kind, string? datum, Spread spread) =>
        kind.Least is { } least && (datum is null || datum == kind.From) ? spread.Intersect(Interval.AtLeast(least.Value)) : spread;

    private static Spread Amount(ReadingKind kind, Reading reading, ReadingValue.OfAmount amount, bool banded) =>
        banded && !amount.Exact && amount.Amount.IsPoint
            ? new Spread(amount.Amount, amount.Amount.Widen(Half(kind, reading, amount.Unit, kind.Measure ?? Measure.Length)))
            : Spread.Within(amount.Amount);

    private static Spread Length(ReadingKind kind, Reading reading, Rational value, Unit unit, bool banded) =>
        banded ? Spread.Read(value, Half(kind, reading, unit, Measure.Length)) : Spread.Exactly(value);

    private Spread Fall(ReadingKind kind, Reading reading, ReadingValue.OfFall fall, bool banded)
    {
        var slope = fall.Rise / fall.Run;
        if (!banded)
        {
            return Spread.Exactly(slope);
        }

        if (fall.ByRatio)
        {
            return Spread.Read(slope,
                ((reading.Tool is { } tool && tool.Marks.ContainsKey(Measure.Slope) ? tool : null) ?? ratioTool)
                ?.HalfMark(Measure.Slope, metric: false) ?? 0);
        }

        // So much per foot is read at a foot's end: the band stands on the rise alone.
        var rise = Length(kind, reading, fall.Rise, fall.Unit, banded);
        var run = fall.Unit == Unit.InchPerFoot ? Spread.Exactly(fall.Run) : Length(kind, reading, fall.Run, fall.Unit, banded);
        return rise.Map(run, Interval.Quotient) with { AsRead = Interval.At(slope) };
    }

    /// <param name="measure">Of the number itself: rise and run of a fall are lengths, though the fall is a slope.</param>
    private static Rational Half(ReadingKind kind, Reading reading, Unit unit, Measure measure) =>
        (reading.Tool ?? kind.Tool)?.HalfMark(measure, unit.IsMetric) ?? 0;
}
