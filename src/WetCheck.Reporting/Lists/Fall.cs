using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>A fall is spoken of over the run it was read over.</summary>
internal static class Fall
{
    /// <summary>Null where it was typed as a slope.</summary>
    public static (Rational Run, Unit Unit)? RunOf(Fact fact) =>
        fact.Counted?.Value is ReadingValue.OfFall { Unit.Measure: Measure.Length } fall ? (fall.Run, fall.Unit) : null;
}
