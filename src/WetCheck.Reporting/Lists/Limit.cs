using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What a reading was held against: as the rule has it, and on the tape that was asked.</summary>
internal static class Limit
{
    /// <summary>"2" or more above the finished curb: 3" on your tape".</summary>
    public static string Should(Measured test, Telling telling)
    {
        var own = Own(test, telling);
        return test is { Condition: Condition.Compare { By: var by }, Fact: { } fact } && OnTape(test, by, fact, telling) is { Length: > 0 } tape
            ? telling.Phrases.Say("limit.tape", ("limit", own), ("tape", tape))
            : own;
    }

    /// <summary>For the slot <c>{limit}</c>: no operator, a height from the datum that was asked, a slope over the run that was read.</summary>
    public static string Plain(Measured test, Telling telling)
    {
        if (test.Condition is not Condition.Compare { By: var by })
        {
            return Choices(test, telling);
        }

        if (test.Fact is { Kind.Is: Form.Fall } fall && Bound(test, by) is { } slope)
        {
            return Fall.RunOf(fall) is var (run, unit) ? Figures.Fall(slope * run, run, unit) : Figures.Of(slope, Unit(test, telling));
        }

        if (test.Fact is { Kind.Is: Form.Height } height && Bound(test, by) is { } level)
        {
            return Found.Height(Interval.At(level), Found.UnitOf(height, telling), DatumOf(height), telling);
        }

        return test.Limit is { } limit ? Figures.Of(limit)
            : Bound(test, by) is { } bound ? Figures.Of(bound, Unit(test, telling))
            : telling.Phrases["slot.limit"];
    }

    /// <summary>As the rule has it: "2" or more above the finished curb".</summary>
    public static string Own(Measured test, Telling telling)
    {
        if (test.Condition is not Condition.Compare compare)
        {
            return Choices(test, telling);
        }

        var phrases = telling.Phrases;
        if (test.Fact is { Kind.Is: Form.Fall } fact && Bound(test, compare.By) is { } slope && Fall.RunOf(fact) is var (run, unit))
        {
            return phrases.Say(
                "limit.fall",
                ("limit", phrases.Say(Key(compare.By), ("limit", Figures.Of(slope * run, unit)))),
                ("run", Figures.Of(run, unit)),
                ("slope", Figures.Of(test.Limit ?? new Quantity(Measure.Slope, slope, telling.UnitOf(Measure.Slope)))));
        }

        if (test is { Limit: { } limit, LimitDatum: { } datum })
        {
            return Height(compare.By, limit.Value, limit.Typed, telling.Datum(datum), phrases);
        }

        if (test.Limit is { } amount)
        {
            return phrases.Say(Key(compare.By), ("limit", Figures.Of(amount)));
        }

        var bound = Bound(test, compare.By) is { } value ? Figures.Of(value, Unit(test, telling)) : phrases["value.nothing"];
        var said = phrases.Say(Key(compare.By), ("limit", bound));
        return compare.To is Operand.Of { Path: var path }
            ? phrases.Say("limit.as", ("limit", said), ("reading", Naming.Reading(path.Reading)))
            : said;
    }

    /// <summary>A rule's limit, without a job: "2" or more above the finished curb".</summary>
    public static string Height(Comparison by, Rational value, Unit unit, string datum, Phrases phrases)
    {
        var form = value.Sign switch { 0 => "-level", < 0 => "-depth", _ => "-height" };
        return phrases.Say(Key(by) + form, ("limit", Figures.Of(value.Abs, unit)), ("datum", datum));
    }

    public static string Key(Comparison by) => by switch
    {
        Comparison.AtLeast => "limit.at-least",
        Comparison.AtMost => "limit.at-most",
        Comparison.Over => "limit.over",
        _ => "limit.under",
    };

    /// <summary>Empty where the rule's limit already stands in the datum and the units of the tape.</summary>
    private static string OnTape(Measured test, Comparison by, Fact fact, Telling telling)
    {
        var unit = Found.UnitOf(fact, telling);
        var sameDatum = test.LimitDatum is null || test.LimitDatum == DatumOf(fact);
        var sameUnits = test.Limit is not { Measure: Measure.Length } limit || limit.Typed.IsMetric == unit.IsMetric;
        if (fact.Kind.Is == Form.Fall || (sameDatum && sameUnits) || Bound(test, by) is not { } bound)
        {
            return "";
        }

        var amount = Figures.Of(bound.Abs, unit);
        var tape = fact.Kind.Is != Form.Height || (bound.Sign > 0 && test.LimitSpread.AsRead.IsPoint) ? amount
            : telling.Phrases.Say(bound.Sign < 0 ? "limit.tape-below" : "limit.tape-above", ("limit", amount));
        return test.LimitSpread.AsRead.IsPoint ? tape
            : telling.Phrases.Say(by is Comparison.AtLeast or Comparison.Over ? "limit.tape-at-least" : "limit.tape-at-most", ("limit", tape));
    }

    /// <summary>The end of the limit's stretch that a failing reading misses whatever the limit turns out to be.</summary>
    private static Rational? Bound(Measured test, Comparison by) =>
        by is Comparison.AtLeast or Comparison.Over ? test.LimitSpread.AsRead.Lo : test.LimitSpread.AsRead.Hi;

    private static string? DatumOf(Fact fact) => fact.Counted?.Value is ReadingValue.OfAmount { Datum: { } typed } ? typed
        : fact.OnPaper is Known.Number { Datum: { } known } ? known
        : fact.Kind.From;

    private static Unit Unit(Measured test, Telling telling) => test.Fact is { } fact ? Found.UnitOf(fact, telling) : telling.UnitOf(Measure.Length);

    private static string Choices(Measured test, Telling telling) => test.Condition is Condition.Is choice
        ? telling.Phrases.List([.. choice.OneOf.Select(key => Found.Choice(key, choice.Path.Reading, telling.Phrases))], "say.or")
        : "";
}
