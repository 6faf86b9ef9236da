using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>By how much a reading misses its limit, on the tape it was read with.</summary>
internal static class Short
{
    /// <summary>Empty where nothing is missing, or nothing can be said of it.</summary>
    public static string By(Measured test, Telling telling)
    {
        if (test.Fact is not { } fact || test.Condition is not Condition.Compare || test.Slack.AsRead.Hi is not { Sign: < 0 } least)
        {
            return "";
        }

        var lacks = Fall.Of(fact) is { } fall ? telling.Show.FallShort(-least, fall)
            : telling.Show.Short(-least, Found.UnitOf(fact, telling));
        return test.Slack.AsRead.IsPoint ? lacks : telling.Phrases.Say(Phrase.Bound.Least, ("amount", lacks));
    }

    /// <summary>True where the limit is a greatest value: what is found lies over it.</summary>
    public static bool IsOver(Measured test) => test.Condition is Condition.Compare { By: Comparison.AtMost or Comparison.Under };
}
