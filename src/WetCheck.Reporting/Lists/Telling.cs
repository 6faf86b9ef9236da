using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>A walk, and the words it is told in.</summary>
internal sealed record Telling(Walk Walk, Phrases Phrases)
{
    public Job Job => Walk.Job;

    public Show Show => Phrases.Show;

    public RuleTexts Texts(Rule rule) => rule.In(Phrases.Language);

    /// <summary>The unit a number is shown in where nobody typed one.</summary>
    public Unit UnitOf(Measure measure) => (measure, Job.Metric == true) switch
    {
        (Measure.Length, false) => Unit.Inch,
        (Measure.Length, true) => Unit.Millimetre,
        (Measure.Slope, false) => Unit.InchPerFoot,
        (Measure.Slope, true) => Unit.PercentFall,
        (Measure.Area, false) => Unit.SquareInch,
        (Measure.Area, true) => Unit.SquareMetre,
        (Measure.Volume, false) => Unit.CubicFoot,
        (Measure.Volume, true) => Unit.Litre,
        (Measure.Temperature, false) => Unit.Fahrenheit,
        (Measure.Temperature, true) => Unit.Celsius,
        (Measure.Duration, _) => Unit.Hour,
        (Measure.Percent, _) => Unit.Percent,
        _ => Unit.Each,
    };

    public Part? PartOf(FactId id) => Job.Parts.FirstOrDefault(part => part.Part.Id == id.Part)?.Part;

    /// <summary>Where the job file speaks of a part, or would.</summary>
    public At? LineOf(Part part) => Job.Parts.FirstOrDefault(one => one.Part == part)?.At;

    public string Datum(string name) => Walk.Book.Vocabulary.Datum(name) is { } datum ? Phrases.Of(datum.Say) : name;
}
