using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>A job with the levels of the table beside it. They count as if they stood on the line <c>floor.levels</c>.</summary>
public static class LevelFile
{
    private const string Floor = "floor";
    private const string Levels = "levels";

    /// <param name="file">The table's name, for people.</param>
    /// <param name="text">Null: there is none.</param>
    public static (Job Job, IReadOnlyList<Problem> Problems) Apply(Job job, Vocabulary vocabulary, string file, string? text)
    {
        if (text is null || vocabulary.Kind(Floor) is not { } floor || floor.Find(Levels) is not { } reading)
        {
            return (job, []);
        }

        var problems = new ProblemList();
        var source = new SourceText(file, text);
        problems.Open(source);
        if (new LevelTable(source, job.Metric is { } metric ? metric ? Unit.Millimetre : Unit.Inch : null, problems)
            .Read() is not { } levels)
        {
            return (job, problems.InOrder());
        }

        var layout = new JobLayout(vocabulary);
        var draft = JobChange.Recalled(job, layout);
        if (job.Parts.Any(part => part.Part.Kind == floor && part.Of(Levels).Count > 0))
        {
            problems.Add(source.Place(1, 1), Messages.LevelsTwice());
        }

        // Who read them, with what, is said once for all at the top of the job.
        var by = HeaderReader.ByOf(job.ReadingsBy, source.Place(1, 1), vocabulary);
        draft.Of(floor).Add(Levels, new Reading(levels, Planned: false, file, source.Place(1, 1), by.ToolFor(reading), by.By, by.Date));
        return (Assembly.Make(draft, layout, job.File), problems.InOrder());
    }
}
