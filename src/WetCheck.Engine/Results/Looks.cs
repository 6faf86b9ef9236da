using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>Open checks gathered by the thing to go and see, parts of one kind together, most pressing first.</summary>
internal static class Looks
{
    public static IReadOnlyList<Look> Of(Job job, Vocabulary vocabulary, IReadOnlyList<Entry> entries)
    {
        var parts = job.Parts.ToDictionary(part => part.Part.Id, part => part.Part, StringComparer.Ordinal);
        var owed = entries.Where(entry => entry.Result == Result.ToCheck || entry.Checks.Any(check => check.Result == Result.ToCheck))
            .SelectMany(entry => entry.Checks.Where(check => check.Result == Result.ToCheck)
                .Select(check => (Entry: entry, Check: check, Hangs: Hangs(job, vocabulary, check, parts))))
            .SelectMany(one => Asked(job, vocabulary, one.Hangs)
                .Select(hang => (one.Entry, one.Check, one.Hangs, Hang: hang, Thing: Thing.Of(hang, parts))));
        return [.. owed.GroupBy(one => one.Thing)
            .Select(group =>
                Gather(job, vocabulary, group.Key,
                [.. group.Select(one => (one.Entry, one.Check, one.Hangs, one.Hang))], parts))
            .OrderBy(one => one.Rank)
            .Select(one => one.Look)];
    }

    /// <summary>
    /// What a check hangs on. While the method is not said, what some methods always have and others never is asked by
    /// its name.
    /// </summary>
    private static List<Hang> Hangs(Job job, Vocabulary vocabulary, Check check, Dictionary<string, Part> parts) =>
    [
        .. check.Judgement.Hangs.Select(hang => job.Method is null && hang.Id.Reading == FactId.Presence
            && parts.TryGetValue(hang.Id.Part, out var part)
            && vocabulary.Methods.Any(method => method.Never(part.Kind, part.Place))
                && vocabulary.Methods.Any(method => method.Has.Contains(part.Kind.Name))
                ? new Hang(FactId.Method, null, hang.Phase, Near: false) : hang).Distinct(),
    ];

    /// <summary>
    /// The method first, then existence before when, and when before require: never the sill of a niche that nobody has
    /// seen.
    /// </summary>
    private static List<Hang> Asked(Job job, Vocabulary vocabulary, IReadOnlyList<Hang> hangs) => hangs
        .Where(hang => Owed.CanBeAsked(job, vocabulary, hang))
        .GroupBy(hang => hang.Id == FactId.Method ? 0 : hang.Id.Reading == FactId.Presence ? 1
            : hang.Phase is Phase.Presence or Phase.When ? 2 : 3)
        .OrderBy(group => group.Key)
        .Select(group => group.ToList())
        .FirstOrDefault() ?? [];

    private static (Look Look, LookRank Rank) Gather(
        Job job, Vocabulary vocabulary, Thing thing,
            IReadOnlyList<(Entry Entry, Check Check, List<Hang> Hangs, Hang Hang)> owed, IReadOnlyDictionary<string,
            Part> parts)
    {
        var seen = owed.Select(one => one.Hang.Id).Distinct()
            .Select(id => (Id: id, Part: parts.GetValueOrDefault(id.Part)))
            .OrderBy(one => one.Part?.Kind.Order ?? 0)
            .ThenBy(one => one.Part is { Place: { } place } part ? part.Kind.Places.ToList().IndexOf(place) : 0)
            .ToList();
        var settled = owed.Where(one => one.Hangs.All(hang => Thing.Of(hang, parts) == thing)).Select(one => one.Entry).Distinct().ToList();
        var bears = owed.Select(one => one.Entry).Distinct().Except(settled).ToList();
        var first = settled.Concat(bears).OrderBy(entry => entry.Rule.Severity).ThenBy(entry => entry.Rule.Number)
            .ThenBy(entry => entry.Letters, StringComparer.Ordinal).First();
        var reading = owed.Select(one => one.Hang.Fact?.Kind).FirstOrDefault(kind => kind is not null);
        var paper = owed.Any(one => one.Check.Paper == Paper.Short) ? Paper.Short : Paper.None;
        var look = new Look(first.Number, seen[0].Id, [.. seen.Select(one => one.Part).OfType<Part>().Distinct()],
            reading, paper, settled, bears,
            JobLine.Of(job, seen[0].Part, reading));
        var rank = new LookRank(
            paper != Paper.Short && !owed.Any(one => one.Check.IsShortUnless),
            seen[0].Id != FactId.Method,
            !owed.Any(one => one.Hang.Fact is { } fact
                && Cover.IsNext(job, fact.Kind.LayerOf(parts.GetValueOrDefault(fact.Id.Part)?.Place))),
            first.Rule.Severity,
            -settled.Count,
            reading?.Effort ?? Effort.Ask,
            seen[0].Part?.Kind.Order ?? 0);
        return (look, rank);
    }
}
