using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>The words of book files for the fixed sets of the model.</summary>
internal static class FormWords
{
    public static readonly IReadOnlyList<(string, Form)> Forms =
    [
        ("choice", Form.Choice), ("amount", Form.Amount), ("height", Form.Height), ("fall", Form.Fall),
        ("size", Form.Size), ("point", Form.Point), ("outline", Form.Outline), ("levels", Form.Levels), ("conclusion", Form.Conclusion),
    ];

    public static readonly IReadOnlyList<(string, Measure)> Measures =
    [
        ("count", Measure.Count), ("length", Measure.Length), ("slope", Measure.Slope), ("area", Measure.Area),
        ("volume", Measure.Volume), ("duration", Measure.Duration), ("temperature", Measure.Temperature), ("percent", Measure.Percent),
    ];

    public static readonly IReadOnlyList<(string, Effort)> Efforts =
    [
        ("glance", Effort.Glance), ("ask", Effort.Ask), ("touch", Effort.Touch),
        ("measure", Effort.Measure), ("test", Effort.Test), ("open up", Effort.OpenUp),
    ];

    public static readonly IReadOnlyList<(string, Many)> HowMany =
        [("one", Many.One), ("per place", Many.PerPlace), ("list", Many.List), ("ordered", Many.Ordered)];

    public static readonly IReadOnlyList<(string, Severity)> Severities =
    [
        ("stop", Severity.Stop), ("before cover", Severity.BeforeCover), ("before sign-off", Severity.BeforeSignOff),
            ("touch-up", Severity.TouchUp),
    ];

    public static readonly IReadOnlyList<(string, SourceStatus)> Statuses =
    [
        ("seen", SourceStatus.Seen), ("second-hand", SourceStatus.SecondHand), ("from memory", SourceStatus.FromMemory),
        ("computed", SourceStatus.Computed), ("practice", SourceStatus.Practice),
    ];

    public static readonly IReadOnlyList<(string, Comparison)> Comparisons =
        [("at_least", Comparison.AtLeast), ("at_most", Comparison.AtMost), ("over", Comparison.Over), ("under", Comparison.Under)];

    /// <summary>Inches, millimetres: where a family is tried unstated.</summary>
    public static readonly IReadOnlyList<(string, (bool, bool))> Units =
        [("inches", (true, false)), ("millimetres", (false, true)), ("both", (true, true)), ("nothing", (false, false))];

    /// <summary>Who may have work to do.</summary>
    public static readonly IReadOnlyList<string> Trades = ["setter", "plumber", "electrician", "glazier", "owner"];

    /// <summary>The measure that a form has by nature; null: the vocabulary says it, or there is none.</summary>
    public static Measure? MeasureOf(Form form) => form switch
    {
        Form.Height or Form.Size or Form.Point or Form.Outline or Form.Levels => Measure.Length,
        Form.Fall => Measure.Slope,
        _ => null,
    };
}
