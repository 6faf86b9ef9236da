using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>
/// Asks about what reads well and is hardly meant. The readings count as they stand, but for a size that an outline
/// makes too large.
/// </summary>
internal static class Questions
{
    public static void Ask(Job job, Draft draft, Vocabulary vocabulary, ProblemList problems)
    {
        NotBegun(job, problems);
        FromNowhere(job, vocabulary, problems);
        RuledOut(job, draft, problems);
        NoneWithReadings(job, draft, problems);
        OutlinedSizes(job, draft, problems);
        foreach (var part in job.Parts)
        {
            foreach (var (name, readings) in part.Readings)
            {
                foreach (var reading in readings)
                {
                    if (part.Part.Kind.Find(name) is { } kind && Belief.Doubt(reading, kind) is { } doubted)
                    {
                        problems.Add(reading.At, Messages.HardToBelieve(doubted, reading.Typed));
                    }
                }
            }
        }
    }

    private static void OutlinedSizes(Job job, Draft draft, ProblemList problems)
    {
        foreach (var notes in job.Parts.Select(part => draft.Find(part.Part.Kind, part.Part.Place)).OfType<PartNotes>())
        {
            foreach (var (size, floor) in OutlinedSize.Left(Assembly.InOrder(notes, job.File)))
            {
                problems.Add(size.At, Messages.SizeOfNoRectangle(size.Typed, floor));
            }
        }
    }

    private static void NotBegun(Job job, ProblemList problems)
    {
        var early =
            from part in job.Parts
            from pair in part.Readings
            from reading in pair.Value
            let layer = part.Part.Kind.Find(pair.Key)?.LayerOf(part.Part.Place)
            where layer is not null && !reading.Planned && reading.Value is not (ReadingValue.OfNone or ReadingValue.OfHidden)
                && job.SightOf(layer) == Sight.NotBegun
            group reading.At by layer;
        foreach (var layer in early)
        {
            var say = job.Method!.Layers.First(known => known.Name == layer.Key).Say.En;
            problems.Add(First(layer), Messages.NotBegun(Lines(layer), say, job.Stage!));
        }
    }

    /// <summary>
    /// A height taken from a level that the method lacks, as it was typed or as the reading has it. One that lifts a
    /// level of its own, as a curb does, is told in any method.
    /// </summary>
    private static void FromNowhere(Job job, Vocabulary vocabulary, ProblemList problems)
    {
        foreach (var (part, name,
            reading) in job.Parts.SelectMany(part =>
            part.Readings.SelectMany(pair => pair.Value.Select(reading => (part.Part, pair.Key, reading)))))
        {
            if (reading.Value is ReadingValue.OfAmount amount
                && part.Kind.Find(name) is { Is: Form.Height, Lifts: null } kind
                && vocabulary.Datum(amount.Datum ?? kind.From ?? "") is { } datum
                && job.Method?.RulesOut.Contains(datum.Of) == true && job.Method.RulesOut.All(without => part.Nearest(without) is null))
            {
                problems.Add(reading.At, Messages.FromNowhere(datum.Say.En, job.Method.Name));
            }
        }
    }

    private static void RuledOut(Job job, Draft draft, ProblemList problems)
    {
        foreach (var name in job.Method?.RulesOut ?? [])
        {
            var said = job.Parts.Where(part => part.Said == Tri.Yes && part.Part.Nearest(name) is not null
                && IsOwn(part, job)).Select(part => part.At).ToList();
            if (said.Count > 0)
            {
                var kind = job.Parts.First(part => part.Part.Kind.Name == name).Part.Kind;
                problems.Add(First(said), Messages.RuledOut(Lines(said), kind.One.En, job.Method!.Name));
            }
        }

        foreach (var part in job.Parts.Where(part => part.Said == Tri.No && job.Method?.Has.Contains(part.Part.Kind.Name) == true))
        {
            if (draft.Find(part.Part.Kind, part.Part.Place)?.NoneAt is { } at)
            {
                problems.Add(at, Messages.NoneOfMethod(part.Part.Kind.One.En, job.Method!.Name));
            }
        }
    }

    private static void NoneWithReadings(Job job, Draft draft, ProblemList problems)
    {
        foreach (var part in job.Parts.Where(part => part.Said == Tri.Yes))
        {
            if (draft.Find(part.Part.Kind, part.Part.Place)?.NoneAt is { } none)
            {
                var readings =
                    job.Parts.Where(below => IsBelow(below.Part, part.Part)).SelectMany(below => below.Readings.Values)
                    .SelectMany(all => all).Select(reading => reading.At).ToList();
                problems.Add(none,
                    Messages.NoneWithReadings(part.Part.Kind.One.En.Replace("{place}", part.Part.Place?.Say.En ?? "",
                    StringComparison.Ordinal), readings.Count == 0 ? [part.At.Line] : Lines(readings)));
            }
        }
    }

    /// <summary>The file speaks of the part itself, not only of a part below it.</summary>
    private static bool IsOwn(JobPart part, Job job) =>
        part.Readings.Count > 0 || !job.Parts.Any(below => below.Part.Above == part.Part && below.Said == Tri.Yes);

    private static bool IsBelow(Part part, Part above)
    {
        for (var at = part; at is not null; at = at.Above)
        {
            if (at == above)
            {
                return true;
            }
        }

        return false;
    }

    private static At First(IEnumerable<At> places) => places.MinBy(at => (at.Line, at.Column))!;

    private static List<int> Lines(IEnumerable<At> places) => [.. places.Select(at => at.Line).Distinct().Order()];
}
