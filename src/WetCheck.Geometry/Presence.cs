using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>Whether a part is on the job: by what the file says, else by the method, else by the part above.</summary>
internal sealed class Presence(Job job)
{
    private readonly Dictionary<Part, JobPart> _parts = job.Parts.ToDictionary(part => part.Part);

    /// <returns>The answer, and what would tell it.</returns>
    public (Tri Exists, FactId Told) Of(Part part)
    {
        var said = _parts[part].Said;
        var own = new FactId(part.Id, FactId.Presence);
        // What the method always has is there, also where the file says none: then nothing is known of it.
        if (part.Above is null || said == Tri.Yes || (said == Tri.No && Names(job.Method?.Has, part)))
        {
            return (Tri.Yes, own);
        }

        var (above, told) = Of(part.Above);
        if (said == Tri.No || above == Tri.No || job.Method?.Never(part.Kind, part.Place) == true)
        {
            return (Tri.No, own);
        }

        if (part.IsOther)
        {
            return (Tri.Unknown, new FactId(part.Id, FactId.Whole));
        }

        // A part above that nobody has seen is asked first: never the sill of a niche that may not be there.
        return above == Tri.Unknown ? (Tri.Unknown, told)
            : part.Kind.MayBeAbsent && !Names(job.Method?.Has, part) ? (Tri.Unknown, own)
            : (Tri.Yes, own);
    }

    private static bool Names(IReadOnlyList<string>? kinds, Part part) => kinds is not null && kinds.Contains(part.Kind.Name);
}
