using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Keeps what a job says of its parts in step: a part is there where anything is said of a part of it.</summary>
internal static class Standing
{
    public static Job Settled(Job job)
    {
        var there = new HashSet<Part>();
        foreach (var part in job.Parts.Where(part => part.Said == Tri.Yes))
        {
            for (var above = part.Part.Above; above is not null; above = above.Above)
            {
                there.Add(above);
            }
        }

        return job with
        {
            Parts = [.. job.Parts.Select(part => there.Contains(part.Part) && part.Said == Tri.Unknown
            ? part with { Said = Tri.Yes } : part)]
        };
    }

    /// <summary>Nothing is said of a part below it.</summary>
    public static bool IsAlone(Job job, Part part) =>
        !job.Parts.Any(other => other.Said == Tri.Yes && other.Part != part && IsBelow(other.Part, part));

    public static Job With(Job job, JobPart changed) =>
        job with { Parts = [.. job.Parts.Select(part => part.Part == changed.Part ? changed : part)] };

    private static bool IsBelow(Part part, Part top) => part.Above is { } above && (above == top || IsBelow(above, top));
}
