using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>
/// Puts the parts of a job that was walked before in the place of equal ones, so that what did not change is the same
/// object.
/// </summary>
internal static class KeptParts
{
    public static Job Of(Job before, Job now)
    {
        var old = before.Parts.ToDictionary(part => part.Part.Id, StringComparer.Ordinal);
        var made = new Dictionary<string, Part>(StringComparer.Ordinal);
        return now with { Parts = [.. now.Parts.Select(Kept)] };

        JobPart Kept(JobPart part) => old.TryGetValue(part.Part.Id, out var was) && (ReferenceEquals(was, part) || Says(was, part))
            ? was
            : part with { Part = Same(part.Part) };

        Part Same(Part part)
        {
            if (old.TryGetValue(part.Id, out var was))
            {
                return was.Part;
            }

            if (!made.TryGetValue(part.Id, out var one))
            {
                made[part.Id] = one =
                    new Part(part.Kind, part.Above is { } above ? Same(above) : null, part.Place, part.Index,
                    part.IsOther);
            }

            return one;
        }
    }

    private static bool Says(JobPart a, JobPart b) => a.Said == b.Said && a.Readings.Count == b.Readings.Count
        && a.Readings.All(pair => b.Readings.TryGetValue(pair.Key, out var other) && pair.Value.SequenceEqual(other));
}
