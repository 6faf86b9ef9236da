using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>From what a job says to what is known of each of its parts: facts, bounds, levels. No rules.</summary>
public static class Derive
{
    /// <returns>One state for each part, in the order of the job.</returns>
    public static IReadOnlyList<PartState> From(Job job, Vocabulary vocabulary)
    {
        var facts = new JobFacts(job, vocabulary);
        return [.. job.Parts.Select(part => Of(part, facts))];
    }

    /// <summary>The state of one part; the same as <see cref="From"/> gives for it.</summary>
    internal static PartState Of(JobPart part, JobFacts facts)
    {
        var (exists, presence) = facts.Presence.Of(part.Part);
        return new PartState(part.Part, exists, presence, facts.Of(part), part.Part.Above is null ? facts.Surroundings() : null);
    }
}
