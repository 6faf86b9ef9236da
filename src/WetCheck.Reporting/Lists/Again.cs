using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>A reading that its tool can't settle, or that another contradicts.</summary>
internal static class Again
{
    /// <summary>"read by a tape to 1/16"".</summary>
    public static string By(Fact? fact, Telling telling) => Mark(fact, telling) is { } mark
        ? telling.Phrases.Say(Phrase.Again.By, ("tool", mark.Tool), ("mark", mark.Smallest))
        : "";

    public static string Do(Fact? fact, Telling telling) => telling.Phrases[fact?.Clash == true ? Phrase.Again.Clash : Phrase.Again.Near];

    /// <summary>The tool of a reading and its smallest mark; null where it has none.</summary>
    public static (string Tool, string Smallest)? Mark(Fact? fact, Telling telling)
    {
        if (fact is not { Counted: { } reading } || (reading.Tool ?? fact.Kind.Tool) is not { } tool)
        {
            return null;
        }

        var unit = Found.UnitOf(fact, telling);
        var (measure, shown) = Fall.Of(fact) is { Unit.Measure: Measure.Length } fall ? (Measure.Length, fall.Unit) : (unit.Measure, unit);
        var half = tool.HalfMark(measure, shown.IsMetric);
        return half.Sign == 0 ? null : (telling.Phrases.Of(tool.Say), telling.Show.Of(half * 2, shown));
    }
}
