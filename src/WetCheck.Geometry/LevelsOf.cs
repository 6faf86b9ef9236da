using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>
/// The stack of heights of a job: which datum stands how far above which, as read and by bounds of nature. Only over parts that are there
/// for sure: what stands on a drain that may not be there says nothing.
/// </summary>
internal static class LevelsOf
{
    public static Levels Job(Job job, Vocabulary vocabulary, JobFacts facts)
    {
        var owners = vocabulary.Datums
            .Select(datum => (datum.Name, Part: facts.PartsOf(datum.Of).FirstOrDefault()))
            .Where(owner => owner.Part is not null)
            .ToDictionary(owner => owner.Name, owner => State(owner.Part!, facts), StringComparer.Ordinal);
        var read = job.Parts
            .Where(part => facts.Presence.Of(part.Part).Exists == Tri.Yes)
            .SelectMany(part => part.Part.Kind.Readings.Where(kind => kind.Lifts is not null).SelectMany(kind => Steps(part, kind, facts)));
        var nature = vocabulary.Steps.Select(step =>
            new LevelStep(step.Above, step.Datum, null, Interval.At(step.Exactly.Value)));
        return new Levels([.. read, .. nature.Where(step => IsHere(step.From) && IsHere(step.To))], owners);

        bool IsHere(string datum) => owners.TryGetValue(datum, out var owner) && owner.Exists == Tri.Yes;
    }

    private static IEnumerable<LevelStep> Steps(JobPart part, ReadingKind kind, JobFacts facts)
    {
        var fact = facts.Read(part, kind.Name)!;
        var from = (fact.OnPaper as Known.Number)?.Datum ?? kind.From!;
        var bound = kind.Least is { } least ? Interval.AtLeast(least.Value) : Interval.Everything;
        yield return new LevelStep(from, kind.Lifts!, fact, from == kind.From ? bound : Interval.Everything);
        if (from != kind.From && bound != Interval.Everything)
        {
            yield return new LevelStep(kind.From!, kind.Lifts!, null, bound);
        }
    }

    private static PartState State(JobPart part, JobFacts facts)
    {
        var (exists, told) = facts.Presence.Of(part.Part);
        return new PartState(part.Part, exists, told, new Dictionary<string, Fact>());
    }
}
