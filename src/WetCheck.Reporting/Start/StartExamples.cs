using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What may stand as an example beside a question: true of this stop, in the units of the job.</summary>
internal sealed class StartExamples(Job job, Phrases phrases)
{
    private const string Plan = "plan ";
    private const int Widest = 50;

    /// <summary>All words of a choice, if few; else the example of the vocabulary.</summary>
    public StartLine Of(string name, string ask, PartKind kind, ReadingKind reading)
    {
        string[] choices = [.. reading.Choices.Select(choice => Planned(choice.Key, kind, reading))];
        if (choices.Length == 0 || kind.Many == Many.Ordered || string.Join(", ", choices).Length > Widest)
        {
            return Alone(name, ask, kind, reading);
        }

        return kind.Many == Many.PerPlace && !IsAhead(kind, reading)
            ? Alone(name, ask, kind, reading)
            : new(name, ask, choices) { Words = [.. reading.Choices.Select(choice => Planned(phrases.Of(choice.Say), kind, reading))] };
    }

    /// <summary>The example alone, at its place if it needs one.</summary>
    public StartLine Alone(string name, string ask, PartKind kind, ReadingKind reading, string place = "") =>
        new(name, ask, [place + Planned(InUnits(reading), kind, reading)]);

    /// <summary>Of what is not built yet there can only be a plan; of what stands here there is a reading.</summary>
    private string Planned(string example, PartKind kind, ReadingKind reading)
    {
        var bare = example.StartsWith(Plan, StringComparison.Ordinal) ? example[Plan.Length..] : example;
        return IsAhead(kind, reading) ? kind.IsList ? Plan + bare.Replace(", ", ", " + Plan, StringComparison.Ordinal) : Plan + bare
            : job.Stage is null ? example
            : bare;
    }

    private string InUnits(ReadingKind reading) => job.Metric == true && reading.Measure is Measure.Length or Measure.Slope
        ? MetricFigures.Of(reading.Example)
        : reading.Example;

    private bool IsAhead(PartKind kind, ReadingKind reading) => Sights(kind, reading).All(sight => sight == Sight.NotBegun);

    private IEnumerable<Sight> Sights(PartKind kind, ReadingKind reading) =>
        kind.Places.Select(reading.LayerOf).DefaultIfEmpty(reading.Layer).Select(job.SightOf);
}
