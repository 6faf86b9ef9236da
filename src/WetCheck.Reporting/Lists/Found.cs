using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What was read, in the form of its reading: a height from the datum that was asked, a fall over its run.</summary>
internal static class Found
{
    public static string Of(Fact fact, Telling telling) => fact.Counted is { } reading
        ? Of(reading.Value, fact.Kind, telling)
        : OfDerived(fact, telling);

    public static string Of(ReadingValue value, ReadingKind kind, Telling telling)
    {
        var phrases = telling.Phrases;
        return value switch
        {
            ReadingValue.OfChoice choice => Choice(choice.Key, kind, phrases),
            ReadingValue.OfAmount { Amount: var amount, Unit: var unit } number => kind.Is == Form.Height
                ? Height(amount, unit, number.Datum ?? kind.From, telling)
                : Stretch(amount, unit, phrases),
            ReadingValue.OfFall { Unit.Measure: Measure.Slope } fall => Figures.Of(fall.Rise / fall.Run, fall.Unit),
            ReadingValue.OfFall fall => Figures.Fall(fall.Rise, fall.Run, fall.Unit),
            ReadingValue.OfSize size => phrases.Say(
                SizeKey(size.Between), ("width", Figures.Of(size.Width, size.Unit)), ("depth", Figures.Of(size.Depth, size.Unit))),
            ReadingValue.OfPoint point => phrases.Say(
                "value.point", ("left", Figures.Of(point.FromLeft, point.Unit)), ("entry", Figures.Of(point.FromEntry, point.Unit))),
            ReadingValue.OfNone => phrases["value.none"],
            _ => phrases["value.hidden"],
        };
    }

    public static string Choice(string key, ReadingKind kind, Phrases phrases) =>
        kind.Choices.FirstOrDefault(choice => choice.Key == key) is { } choice ? phrases.Of(choice.Say) : key;

    /// <summary>A height above or below a level, or bounds of one.</summary>
    public static string Height(Interval amount, Unit unit, string? datum, Telling telling)
    {
        var level = datum is null ? "" : telling.Datum(datum);
        if (amount is { IsPoint: true, Lo: { Sign: 0 } })
        {
            return telling.Phrases.Say("height.level", ("datum", level));
        }

        var below = amount.Hi is { Sign: < 0 } || amount is { Hi.Sign: 0, Lo: null or { Sign: < 0 } };
        return telling.Phrases.Say(
            below ? "height.below" : "height.above",
            ("amount", Stretch(below ? -amount : amount, unit, telling.Phrases)),
            ("datum", level));
    }

    /// <summary>A number, or bounds of one.</summary>
    public static string Stretch(Interval amount, Unit unit, Phrases phrases) => amount switch
    {
        { IsPoint: true, Lo: { } value } => Figures.Of(value, unit),
        { Lo: { } lo, Hi: { } hi } => phrases.Say("bound.between", ("from", Figures.Of(lo, unit)), ("to", Figures.Of(hi, unit))),
        { Lo: { } lo } => phrases.Say(amount.LoOpen ? "bound.over" : "bound.least", ("amount", Figures.Of(lo, unit))),
        { Hi: { } hi } => phrases.Say(amount.HiOpen ? "bound.under" : "bound.most", ("amount", Figures.Of(hi, unit))),
        _ => phrases["value.nothing"],
    };

    /// <summary>A number worked out from others bears its name, and what it was worked out from.</summary>
    private static string OfDerived(Fact fact, Telling telling)
    {
        var known = fact.OnPaper is Known.Nothing ? fact.Now : fact.OnPaper;
        var value = known switch
        {
            Known.OneOf one => Choice(one.Choice, fact.Kind, telling.Phrases),
            Known.Number { Datum: { } datum } height => Height(height.Spread.AsRead, UnitOf(fact, telling), datum, telling),
            Known.Number number => $"{fact.Kind.Name} {Stretch(number.Spread.AsRead, UnitOf(fact, telling), telling.Phrases)}",
            Known.Absent => telling.Phrases["value.none"],
            _ => telling.Phrases["value.nothing"],
        };
        var read = fact.From.Where(from => from.Counted is not null).ToList();
        return read.Count == 1 ? $"{value} ({Of(read[0], telling)})" : value;
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
                _ => null,
            })
            .FirstOrDefault(unit => unit?.Measure == measure) ?? telling.UnitOf(measure);
    }

    private static string SizeKey(Between between) => between switch
    {
        Between.Finished => "size.finished",
        Between.ToStuds => "size.to-studs",
        Between.Overall => "size.overall",
        _ => "size.not-said",
    };
}
