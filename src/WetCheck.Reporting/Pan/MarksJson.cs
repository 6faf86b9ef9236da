using WetCheck.Model;
using static WetCheck.Reporting.JsonFigures;

namespace WetCheck.Reporting;

/// <summary>The screed sheet in JSON. Inches above the top of the drain; falls in inches per foot.</summary>
internal static class MarksJson
{
    public static MarksShape Shape(MarkReport marks, PanSays says) => new()
    {
        Why = marks.Why,
        Window = Known(marks.Window),
        Plan = marks.Plan is { } plan ? Plan(plan) : null,
        Missing = PanJson.Missing(marks.Missing, says),
    };

    private static MarkPlanShape Plan(MarkPlan plan) => new()
    {
        Drain = PanCaseJson.Taken(plan.Taken),
        GivenRim = plan.GivenRim,
        OnTape = plan.OnTape,
        Level = plan.IsLevel,
        RimLow = Round(plan.Lowest),
        RimHigh = Round(plan.Highest),
        Ribs = [.. plan.Ribs.Select(Rib)],
        Steepest = Round(plan.Steepest * 12),
        Flattest = Round(plan.Flattest * 12),
        Dropped = plan.Dropped,
        Held = [.. plan.Held.Select(Held)],
        Below = [.. plan.Below.Select(layer => new MarkBelowShape { Layer = layer.Layer, Down = Round(layer.Down) })],
    };

    private static RibShape Rib(MarkRib rib) => new()
    {
        Kind = rib.Kind,
        Name = rib.Name,
        From = Place(rib.From),
        To = Place(rib.To),
        Length = Round(rib.Length),
        Height = Round(rib.Height),
        Marks = [.. rib.Marks.Select(mark => new TwoFigures(Round(mark.Far), Round(mark.Height)))],
    };

    private static MarkHeldShape Held(MarkHeld held) => new()
    {
        Measure = LimitsJson.Measure(held.Limits),
        Least = LimitsJson.PerFoot(held.Limits.Least),
        Most = LimitsJson.PerFoot(held.Limits.Most),
        Held = LimitsJson.Answers(held.Limits),
        Kept = held.Kept,
        Tight = held.Tight,
    };
}
