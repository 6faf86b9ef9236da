using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>One thing that is known of a job, and the job without it.</summary>
/// <param name="Kind">Of a reading that is lost; null for anything else.</param>
internal sealed record Loss(string Of, Func<Job> After, ReadingKind? Kind = null)
{
    public bool IsMethod => Of == "method";

    public bool IsPresence => Of.EndsWith(": is there", StringComparison.Ordinal);
}

/// <summary>
/// All that a job can lose: a fact with all its readings, what is said of a part being there, that a list is whole, a code that a
/// blank line would try, its edition, the method, the stage. Never a member of a list.
/// </summary>
internal static class Losses
{
    public static IReadOnlyList<Loss> Of(Job job, Vocabulary vocabulary, Dice dice) =>
    [
        .. job.Parts.SelectMany(part => part.Readings.Keys.Select(reading =>
            new Loss($"{part.Part}: {reading}", () => Without(job, part, reading, dice), part.Part.Kind.Find(reading)))),
        .. job.Parts.Where(part => IsPresenceKnown(job, part))
            .Select(part =>
            new Loss($"{part.Part}: is there", () => Standing.With(job, part with { Said = Tri.Unknown }))),
        .. job.Lists.Where(list => list.Whole == Tri.Yes).Select(list => new Loss($"{list.Kind.Name}: all seen", () => Open(job, list))),
        .. job.Codes.SelectMany(code => Codes(job, vocabulary.Discipline(code.Key)!, code.Value)),
        .. job.Method is null ? Array.Empty<Loss>() : [new Loss("method", () => job with { Method = null })],
        .. job.Stage is null ? Array.Empty<Loss>() : [new Loss("stage", () => job with { Stage = null })],
    ];

    /// <summary>A job with blank codes tries this family.</summary>
    public static bool WouldBeTried(Discipline discipline, string family, bool? metric) => discipline.Families.Any(one =>
        one.Name == family
            && (metric is { } millimetres ? millimetres ? one.TriedInMillimetres : one.TriedInInches
            : one.TriedInMillimetres || one.TriedInInches));

    private static Job Without(Job job, JobPart part, string reading, Dice dice)
    {
        var left = part.Readings.Where(one => one.Key != reading).ToDictionary(one => one.Key, one => one.Value, StringComparer.Ordinal);
        var less = Standing.With(job, part with { Readings = left });

        // With its last answer gone a file says no more of a part than that it is there, or not even that.
        return left.Count == 0 && IsPresenceKnown(less, part with { Readings = left }) && dice.Chance(0.5)
            ? Standing.With(less, part with { Readings = left, Said = Tri.Unknown })
            : less;
    }

    private static bool IsPresenceKnown(Job job, JobPart part) =>
        !part.Part.Kind.IsList && part.Part.Above is not null && part.Said != Tri.Unknown
        && (part.Said == Tri.No || (part.Readings.Count == 0 && Standing.IsAlone(job, part.Part)));

    public static Job Open(Job job, JobList list)
    {
        var above = job.Parts.FirstOrDefault(part => part.Part.Kind.Name == list.Kind.Above)?.Part ?? job.Parts[0].Part;
        var other = new JobPart(new Part(list.Kind, above, isOther: true), Tri.Unknown, list.At, JobPart.Nothing);
        return job with
        {
            Lists = [.. job.Lists.Select(one => one.Kind == list.Kind ? one with { Whole = Tri.Unknown } : one)],
            Parts = [.. job.Parts, other],
        };
    }

    private static IEnumerable<Loss> Codes(Job job, Discipline discipline, StatedCode code)
    {
        if (code.Edition is not null)
        {
            yield return new Loss($"{discipline.Name} edition", () => With(code with { Edition = null }));
        }

        if (WouldBeTried(discipline, code.Family, job.Metric))
        {
            yield return new Loss($"{discipline.Name} code", () => With(null));
        }

        Job With(StatedCode? left)
        {
            var codes = job.Codes.ToDictionary(StringComparer.Ordinal);
            if (left is null)
            {
                codes.Remove(discipline.Name);
            }
            else
            {
                codes[discipline.Name] = left;
            }

            return job with { Codes = codes };
        }
    }
}
