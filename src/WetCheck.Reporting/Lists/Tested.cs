using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What a test found: its reading, or the sum of readings that stands in for it.</summary>
internal static class Tested
{
    /// <summary>Empty where nobody has read anything that tells it.</summary>
    public static string Found(Measured test, Telling telling)
    {
        if (test.Fact is not { } fact)
        {
            return "";
        }

        return IsRead(fact) ? Reporting.Found.Of(fact, telling)
            : Sum(test) is not { } sum ? ""
            : test.LimitDatum is { } datum ? Reporting.Found.Height(sum, UnitOf(test, telling), datum, telling)
            : Reporting.Found.Stretch(sum, UnitOf(test, telling), telling);
    }

    /// <summary>Where the reading stands; of a sum its first reading.</summary>
    public static At? At(Measured test, Telling telling) =>
        Facts(test).Select(fact => Items.Place(fact, telling)).FirstOrDefault(at => at is not null);

    public static bool IsPlanned(Measured test) =>
        test.Fact is { } fact && (IsRead(fact) ? fact.IsPlanned : test.Counted.Any(counted => counted.Fact.IsPlanned));

    private static IEnumerable<Fact> Facts(Measured test) => test.Counted.Select(counted => counted.Fact).Prepend(test.Fact).OfType<Fact>();

    /// <summary>Somebody answered it, or something it is worked out from; bounds of nature alone are nothing found.</summary>
    private static bool IsRead(Fact fact) => fact.Counted is not null || fact.From.Any(IsRead);

    /// <summary>A blank height is had by way of others: what it lies above or below its limit tells where it is.</summary>
    private static Interval? Sum(Measured test) =>
        test is
        {
            Condition: Condition.Compare { By: var by }, LimitSpread.AsRead: { IsPoint: true } limit,
            Counted.Count: > 0
        } && test.Counted.Any(counted => IsRead(counted.Fact))
            ? by is Comparison.AtLeast or Comparison.Over ? limit + test.Slack.AsRead : limit - test.Slack.AsRead
            : null;

    private static Unit UnitOf(Measured test, Telling telling) =>
        test.Fact?.Kind.Measure is { } measure && measure != Measure.Length ? telling.UnitOf(measure) :
        Facts(test).Where(fact => fact.Counted is not null).Select(fact => Reporting.Found.UnitOf(fact, telling))
            .FirstOrDefault() ?? telling.UnitOf(Measure.Length);
}
