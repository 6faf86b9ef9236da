using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>Where an answer stands, or would stand, in the job file.</summary>
internal static class JobLine
{
    public static At Of(Job job, Part? part, ReadingKind? reading)
    {
        if (part is null)
        {
            return new At(job.File, 1, 1);
        }

        var stands = part.Place is { } place
            ? part.Kind.Stands.Replace("<place>", place.Name, StringComparison.Ordinal)
            : part.Kind.Stands.Replace(".<place>", "", StringComparison.Ordinal);
        return (reading is not null && job.Where.TryGetValue($"{stands}.{reading.Name}", out var at))
            || job.Where.TryGetValue(stands, out at)
            ? at
            : new At(job.File, 1, 1);
    }
}
