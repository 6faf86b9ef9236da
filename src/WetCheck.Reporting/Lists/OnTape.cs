using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>A limit in the datum and the units that were read: what the tape must show.</summary>
internal static class OnTape
{
    /// <summary>"3"", "1/2" below", "at least 1""; empty where the rule's limit already stands so.</summary>
    public static string Of(Measured test, Telling telling)
    {
        if (test is not { Condition: Condition.Compare { By: var by }, Fact: { Kind.Is: not Form.Fall } fact }
            || Bound(test) is not { } bound
            || (bound.Sign == 0 && fact.Kind.Is == Form.Height)
            || (IsSameDatum(test, fact) && IsSameUnits(test, telling)))
        {
            return "";
        }

        var amount = telling.Show.Of(bound.Abs, UnitOf(test, telling), Marks.For(by));
        var said = bound.Sign < 0 && fact.Kind.Is == Form.Height ? telling.Phrases.Say(Phrase.Limit.TapeBelow, ("limit", amount)) : amount;
        return test.LimitSpread.AsRead.IsPoint
            ? by == Comparison.Over ? telling.Phrases.Say(Phrase.Limit.TapeOver, ("limit", said)) : said
            : telling.Phrases.Say(by is Comparison.AtLeast or Comparison.Over ? Phrase.Limit.TapeAtLeast
                : Phrase.Limit.TapeAtMost, ("limit", said));
    }

    /// <summary>The end of the limit's stretch that a failing reading misses, whatever the limit turns out to be.</summary>
    public static Rational? Bound(Measured test) => test.Condition is Condition.Compare { By: Comparison.AtLeast or Comparison.Over }
        ? test.LimitSpread.AsRead.Lo
        : test.LimitSpread.AsRead.Hi;

    public static string? DatumOf(Fact fact) => fact.Counted?.Value is ReadingValue.OfAmount { Datum: { } typed } ? typed
        : fact.OnPaper is Known.Number { Datum: { } known } ? known
        : fact.Kind.From;

    public static Unit UnitOf(Measured test, Telling telling) =>
        test.Fact is { } fact ? Found.UnitOf(fact, telling) : telling.UnitOf(Measure.Length);

    private static bool IsSameDatum(Measured test, Fact fact) => test.LimitDatum is null || test.LimitDatum == DatumOf(fact);

    private static bool IsSameUnits(Measured test, Telling telling) =>
        test.Limit is not { Measure: Measure.Length or Measure.Area or Measure.Temperature } limit
            || limit.Typed.IsMetric == UnitOf(test, telling).IsMetric;
}
