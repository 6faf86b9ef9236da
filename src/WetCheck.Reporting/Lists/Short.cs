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

        var most = test.Slack.AsRead.Lo;
        if (fact.Kind.Is == Form.Fall)
        {
            return Fall.RunOf(fact) is var (run, unit) ? Figures.Of(-least * run, unit) : Figures.Of(-least, Found.UnitOf(fact, telling));
        }

        return most == least
            ? Figures.Of(-least, Scaled(fact, telling))
            : telling.Phrases.Say("bound.least", ("amount", Figures.Of(-least, Scaled(fact, telling))));
    }

    /// <summary>True where the limit is a greatest value: what is found lies over it.</summary>
    public static bool IsOver(Measured test) => test.Condition is Condition.Compare { By: Comparison.AtMost or Comparison.Under };

    public static bool IsOnTheLimit(Measured test) => test is { Answer: Tri.No, Slack.AsRead: { IsPoint: true, Lo: { Sign: 0 } } };

    /// <summary>A difference has no zero: in degrees Celsius it is a count of degrees.</summary>
    private static Unit Scaled(Fact fact, Telling telling)
    {
        var unit = Found.UnitOf(fact, telling);
        return unit == Unit.Celsius ? unit with { Shift = 0 } : unit;
    }
}
