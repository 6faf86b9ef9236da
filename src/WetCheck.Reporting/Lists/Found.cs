using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What was read, in the form of its reading: a height from the datum that was asked, a fall over its run.</summary>
internal static class Found
{
    public static string Of(Fact fact, Telling telling) => fact.Counted is { } reading
        ? Of(reading.Value, fact.Kind, telling)
        : OfDerived(fact, telling);

    public static string Of(ReadingValue value, ReadingKind kind, Telling telling) => value switch
    {
        ReadingValue.OfChoice choice => Choice(choice.Key, kind, telling.Phrases),
        ReadingValue.OfAmount height when kind.Is == Form.Height => Height(height.Amount, height.Unit, height.Datum ?? kind.From, telling),
        ReadingValue.OfAmount amount => Stretch(amount.Amount, amount.Unit, telling),
        ReadingValue.OfFall fall => telling.Show.Fall(fall),
        ReadingValue.OfSize size => Size(size, telling),
        ReadingValue.OfPoint point => telling.Phrases.Say(
            Phrase.Value.Point, ("left", telling.Show.Of(point.FromLeft, point.Unit)),
            ("entry", telling.Show.Of(point.FromEntry, point.Unit))),
        ReadingValue.OfOutline outline =>
            telling.Phrases.Say(Phrase.Value.Outline, ("corners", string.Join("; ", outline.Corners.All.Select(corner =>
            $"{telling.Show.Of(corner.FromLeft, outline.Unit)}, {telling.Show.Of(corner.FromEntry, outline.Unit)}")))),
        ReadingValue.OfLevels levels => telling.Phrases.Say(Phrase.Value.Levels, ("count", $"{levels.Points.All.Count}")),
        ReadingValue.OfNone => telling.Phrases[Phrase.Value.None],
        _ => telling.Phrases[Phrase.Value.Hidden],
    };

    public static string Choice(string key, ReadingKind kind, Phrases phrases) =>
        kind.Choices.FirstOrDefault(choice => choice.Key == key) is { } choice ? phrases.Of(choice.Say) : key;

    /// <summary>A height above or below a level, or bounds of one.</summary>
    public static string Height(Interval amount, Unit unit, string? datum, Telling telling)
    {
        var level = datum is null ? "" : telling.Datum(datum);
        if (amount is { IsPoint: true, Lo: { } up })
        {
            return telling.Show.Height(up, unit, level);
        }

        var below = amount.Hi is { Sign: < 0 } || amount is { Hi.Sign: 0, Lo: null or { Sign: < 0 } };
        return amount is { Lo: null, Hi.Sign: 0 } ? telling.Phrases.Say(Phrase.Height.BelowLevel, ("datum", level))
            : amount is { Hi: null, Lo.Sign: 0 } ? telling.Phrases.Say(Phrase.Height.AboveLevel, ("datum", level))
            : telling.Phrases.Say(
                below ? Phrase.Height.Below : Phrase.Height.Above,
                ("amount", Stretch(below ? -amount : amount, unit, telling)),
                ("datum", level));
    }

    /// <summary>A number, or bounds of one.</summary>
    public static string Stretch(Interval amount, Unit unit, Telling telling)
    {
        var (phrases, show) = (telling.Phrases, telling.Show);
        return amount switch
        {
            { IsPoint: true, Lo: { } value } => show.Of(value, unit),
            { Lo: { } lo, Hi: { } hi } when show.Of(lo, unit) == show.Of(hi, unit) => show.Of(lo, unit),
            { Lo: { } lo, Hi: { } hi } => phrases.Say(Phrase.Bound.Between, ("from", show.Of(lo, unit)), ("to", show.Of(hi, unit))),
            { Lo: { } lo } => phrases.Say(amount.LoOpen ? Phrase.Bound.Over : Phrase.Bound.Least, ("amount", show.Of(lo, unit))),
            { Hi: { } hi } => phrases.Say(amount.HiOpen ? Phrase.Bound.Under : Phrase.Bound.Most, ("amount", show.Of(hi, unit))),
            _ => phrases[Phrase.Value.Nothing],
        };
    }

    /// <summary>The unit it was typed in; of a derived number that of what it was worked out from.</summary>
    public static Unit UnitOf(Fact fact, Telling telling)
    {
        var measure = fact.Kind.Measure ?? Measure.Length;
        return fact.From.Prepend(fact)
            .Select(f => f.Counted?.Value)
            .Select(value => value switch
            {
                ReadingValue.OfAmount amount => amount.Unit,
                ReadingValue.OfFall fall => fall.Unit,
                ReadingValue.OfSize size => size.Unit,
                ReadingValue.OfPoint point => point.Unit,
                ReadingValue.OfOutline outline => outline.Unit,
                ReadingValue.OfLevels levels => levels.Unit,
                _ => null,
            })
            .FirstOrDefault(unit => unit?.Measure == measure) ?? telling.UnitOf(measure);
    }

    /// <summary>A number worked out from others bears its name, and what it was worked out from.</summary>
    private static string OfDerived(Fact fact, Telling telling)
    {
        var known = fact.OnPaper is Known.Nothing ? fact.Now : fact.OnPaper;
        var value = known switch
        {
            Known.OneOf one => Choice(one.Choice, fact.Kind, telling.Phrases),
            Known.Number { Datum: { } datum } height => Height(height.Spread.AsRead, UnitOf(fact, telling), datum, telling),
            Known.Number number => $"{Naming.Reading(fact.Kind)} {Stretch(number.Spread.AsRead, UnitOf(fact, telling), telling)}",
            Known.Absent => telling.Phrases[Phrase.Value.None],
            _ => telling.Phrases[Phrase.Value.Nothing],
        };
        var read = fact.From.Where(from => from.Counted is not null).ToList();
        return read.Count == 1 ? $"{value} ({Of(read[0], telling)})" : value;
    }

    private static string Size(ReadingValue.OfSize size, Telling telling)
    {
        var said = telling.Phrases.Say(
            size.Between switch
            {
                Between.Finished => Phrase.Size.Finished,
                Between.ToStuds => Phrase.Size.ToStuds,
                Between.Overall => Phrase.Size.Overall,
                _ => Phrase.Size.NotSaid,
            },
            ("width", telling.Show.Of(size.Width, size.Unit)),
            ("depth", telling.Show.Of(size.Depth, size.Unit)));
        return size.Floor is { } floor
            ? telling.Phrases.Say(Phrase.Size.Floor, ("size", said), ("floor", telling.Show.Of(floor, telling.UnitOf(Measure.Area))))
            : said;
    }
}
