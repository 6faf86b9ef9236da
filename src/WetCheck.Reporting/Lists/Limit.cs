using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What a reading was held against, as the rule has it.</summary>
internal static class Limit
{
    /// <summary>"2" or more above the finished curb: 3" on your tape".</summary>
    public static string Should(Measured test, Telling telling)
    {
        var own = Own(test, telling);
        return OnTape.Of(test, telling) is { Length: > 0 } tape
            ? telling.Phrases.Say(Phrase.Limit.Tape, ("limit", own), ("tape", tape))
            : own;
    }

    /// <summary>The same where there is little room: "3" on your tape", or as <see cref="Amount"/>.</summary>
    public static string Brief(Measured test, Telling telling) =>
        OnTape.Of(test, telling) is { Length: > 0 } tape ? telling.Phrases.Say(Phrase.Limit.TapeOnly, ("tape", tape))
            : Amount(test, telling);

    /// <summary>Without the level it is taken from, where that has just been named; a fall without its slope.</summary>
    public static string Amount(Measured test, Telling telling) => test switch
    {
        { Condition: Condition.Compare { By: var by } } when Fall.Of(test.Fact) is { } fall
            && OnTape.Bound(test) is { } slope => telling.Show.FallLimit(slope, fall, by),
        { Condition: Condition.Compare { By: var by }, Limit: { Value.Sign: > 0 } limit, LimitDatum: not null } =>
            telling.Show.Limit(limit.Value, limit.Typed, by),
        _ => Own(test, telling),
    };

    /// <summary>"2" or more above the finished curb"; a fall over the run that was read; "folded or pieced".</summary>
    public static string Own(Measured test, Telling telling)
    {
        var (phrases, show) = (telling.Phrases, telling.Show);
        if (test.Condition is not Condition.Compare compare)
        {
            return Choices(test, telling);
        }

        if (Fall.Of(test.Fact) is { } fall && OnTape.Bound(test) is { } slope)
        {
            var limit = show.FallLimit(slope, fall, compare.By);
            return fall.ByRatio || fall.Unit == Unit.InchPerFoot || test.Limit is null
                ? limit
                : phrases.Say(Phrase.Limit.Fall, ("limit", limit), ("slope", show.Of(test.Limit.Value)));
        }

        if (test.Limit is { } held)
        {
            return test.LimitDatum is { } datum
                ? Height(compare.By, held, telling.Datum(datum), phrases)
                : show.Limit(held.Value, held.Typed, compare.By);
        }

        var bound = OnTape.Bound(test) is { } value ? show.Limit(value, OnTape.UnitOf(test, telling), compare.By) : "";
        return compare.To is Operand.Of { Path: var path }
            ? phrases.Say(bound.Length > 0 ? Phrase.Limit.As : Phrase.Limit.AsOpen, ("limit", bound),
                ("reading", As(path.Reading, phrases)))
            : bound.Length > 0 ? bound : phrases[Phrase.Value.Nothing];
    }

    /// <summary>What another reading asks: "the maker's sheet asks", "was asked for".</summary>
    public static string As(ReadingKind reading, Phrases phrases) =>
        phrases.Find("limit.as-" + reading.Name.Replace(' ', '-')) ?? Naming.Reading(reading);

    /// <summary>
    /// For the slot <c>{limit}</c>: no operator, a height from the datum that was asked, a slope over the run that was
    /// read.
    /// </summary>
    public static string Plain(Measured test, Telling telling)
    {
        var show = telling.Show;
        if (test.Condition is not Condition.Compare { By: var by })
        {
            return Choices(test, telling);
        }

        var rounding = Marks.For(by);
        return OnTape.Bound(test) is not { } bound ? test.Limit is { } limit ? show.Of(limit) : telling.Phrases[Phrase.Slot.Limit]
            : Fall.Of(test.Fact) is { ByRatio: false, Unit.Measure: Measure.Length } fall ? show.Of(bound * fall.Run, fall.Unit, rounding)
            : test.Fact is { Kind.Is: Form.Height } height
                ? show.Height(bound, OnTape.UnitOf(test, telling), telling.Datum(OnTape.DatumOf(height) ?? ""))
            : test.Limit is { } amount ? show.Of(amount)
            : show.Of(bound, OnTape.UnitOf(test, telling), rounding);
    }

    /// <summary>"2" or more above the finished curb"; "above the level to which water can stand".</summary>
    public static string Height(Comparison by, Quantity limit, string datum, Phrases phrases)
    {
        var form = limit.Value.Sign switch { 0 => "-level", < 0 => "-depth", _ => "-height" };
        return phrases.Say(Key(by) + form, ("limit", phrases.Show.Of(limit.Value.Abs, limit.Typed)), ("datum", datum));
    }

    public static string Bounded(Comparison by, string limit, Phrases phrases) => phrases.Say(Key(by), ("limit", limit));

    private static string Key(Comparison by) => by switch
    {
        Comparison.AtLeast => Phrase.Limit.AtLeast,
        Comparison.AtMost => Phrase.Limit.AtMost,
        Comparison.Over => Phrase.Limit.Over,
        _ => Phrase.Limit.Under,
    };

    /// <summary>"folded or pieced"; where most choices are good, those that are not: "not film or felt".</summary>
    private static string Choices(Measured test, Telling telling)
    {
        if (test.Condition is not Condition.Is { Path.Reading: var reading } choice)
        {
            return "";
        }

        var others = reading.Choices.Select(other => other.Key).Except(choice.OneOf).ToList();
        return others.Count > 0 && others.Count * 2 < choice.OneOf.Count
            ? telling.Phrases.Say(Phrase.Limit.Not, ("limit", List(others)))
            : List(choice.OneOf);

        string List(IEnumerable<string> keys) =>
            telling.Phrases.List([.. keys.Select(key => Found.Choice(key, reading, telling.Phrases))], Phrase.Say.Or);
    }
}
