using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Changes a job anywhere, towards what another job says: readings, presence, lists, codes, method, stage, units.</summary>
internal static class Change
{
    public static Job Of(Job job, Job other, Dice dice) => dice.Next(0, 11) switch
    {
        0 => job with { Method = other.Method },
        1 => job with { Stage = other.Stage },
        2 => job with { Codes = other.Codes },
        3 => job with { Metric = other.Metric },
        4 => Appended(job, other, dice),
        5 => Counted(job, dice),
        6 => Present(job, dice),
        7 or 8 => Read(job, other, dice, parts => [.. parts.Where(part => part.Part.Kind.Many == Many.One)]),
        _ => Read(job, other, dice, parts => parts),
    };

    /// <summary>A part says what the same part of the other job says, in one reading or in all.</summary>
    private static Job Read(Job job, Job other, Dice dice, Func<IReadOnlyList<JobPart>, IReadOnlyList<JobPart>> among)
    {
        var pairs = among(job.Parts).Where(part => !part.Part.IsOther)
            .Select(part => (Part: part, Like: other.Parts.FirstOrDefault(one => one.Part.Id == part.Part.Id)))
            .Where(pair => pair.Like is not null && pair.Part.Readings.Count + pair.Like.Readings.Count > 0)
            .ToList();
        if (pairs.Count == 0)
        {
            return job;
        }

        var (part, like) = dice.Pick(pairs);
        var one = dice.Chance(0.6) ? dice.Pick([.. part.Readings.Keys.Union(like!.Readings.Keys)]) : null;
        var readings = part.Readings.Where(pair => one is not null && pair.Key != one)
            .Concat(like!.Readings.Where(pair => one is null || pair.Key == one))
            .ToDictionary(StringComparer.Ordinal);
        return Standing.With(job,
            part with { Readings = readings, Said = part.Part.Kind.IsList || one is not null ? part.Said : like.Said });
    }

    private static Job Present(Job job, Dice dice)
    {
        var part = dice.Pick([.. job.Parts.Where(part => part.Part.Above is not null && !part.Part.Kind.IsList)]);
        return Standing.With(job, part with { Said = dice.Pick([Tri.No, Tri.Unknown, Tri.Yes]) });
    }

    /// <summary>One more member of a list, at any of its places.</summary>
    private static Job Appended(Job job, Job other, Dice dice)
    {
        var list = dice.Pick(job.Lists).Kind;
        var (like, above) = (other.Parts.FirstOrDefault(part => part.Part.Kind == list && !part.Part.IsOther), AboveOf(job, list));
        var place = list.Places.Count > 0 ? dice.Pick(list.Places) : null;
        var index = job.Parts.Count(part => part.Part.Kind == list && !part.Part.IsOther && part.Part.Place == place) + 1;
        var member = new JobPart(new Part(list, above, place, index), Tri.Yes, At.Nowhere, like?.Readings ?? JobPart.Nothing);
        return job with { Parts = [.. job.Parts, member] };
    }

    /// <summary>A list turns whole, or is no longer.</summary>
    private static Job Counted(Job job, Dice dice)
    {
        var list = dice.Pick(job.Lists);
        return list.Whole != Tri.Yes
            ? job with
            {
                Lists = [.. job.Lists.Select(one => one == list ? one with { Whole = Tri.Yes } : one)],
                Parts = [.. job.Parts.Where(part => part.Part.Kind != list.Kind || !part.Part.IsOther)],
            }
            : Losses.Open(job, list);
    }

    private static Part AboveOf(Job job, PartKind kind) =>
        job.Parts.FirstOrDefault(part => part.Part.Kind.Name == kind.Above)?.Part ?? job.Parts[0].Part;
}
