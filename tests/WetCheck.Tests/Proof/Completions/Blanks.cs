using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>All that a rule reads of a job that is known whole, each as something that might not be known.</summary>
internal sealed class Blanks(RuleBook book, TrueRoom room, Job job, Dice dice)
{
    private const int MostOfAPart = 400;
    private readonly Values _values = new(book, room, dice);

    public IEnumerable<Blank> Of(Reads reads) =>
    [
        .. job.Parts.Where(part => part.Said == Tri.Yes)
            .SelectMany(part => part.Readings.Keys.Where(reading => reads.Has(part.Part.Kind.Name, reading))
            .Select(reading => Reading(part, reading))),
        .. job.Parts.Where(part => MayBeGone(part.Part.Kind) && reads.Kinds.Contains(part.Part.Kind.Name))
            .Select(part => Presence(part, reads)).Where(blank => blank.Ways.Count <= MostOfAPart),
        .. job.Lists.Where(list => list.Kind.Name != "lifted tile" && reads.Kinds.Contains(list.Kind.Name))
            .Select(list => Rest(list, reads)).Where(blank => blank.Ways.Count <= MostOfAPart),
        .. reads.Disciplines.Where(discipline =>
            Losses.WouldBeTried(book.Vocabulary.Discipline(discipline)!, room.Codes[discipline].Family, job.Metric))
            .Select(Code),
        .. reads.Method ? [Method()] : Array.Empty<Blank>(),
    ];

    private Blank Reading(JobPart part, string reading)
    {
        var kind = part.Part.Kind.Find(reading)!;
        var mayContradict = kind.Lifts is not null || kind.Is is Form.Fall or Form.Size or Form.Point || reading == "rim";
        var ways = _values.Of(part.Part.Kind, kind, Truth(part.Part, reading))
            .Select(value => (Func<Job, Job>)(on => Put(on, part.Part, reading, value)));
        return new Blank($"{part.Part}: {reading}", on => Put(on, part.Part, reading, null), [.. ways], mayContradict,
            (reads, self) => reads.On(self, part.Part, reading));
    }

    /// <summary>It may be there or not; if it is, with all that is read of it.</summary>
    private Blank Presence(JobPart part, Reads reads)
    {
        var there = Filled(part.Part, reads)
            .Select(readings =>
            (Func<Job, Job>)(on => Standing.With(on, part with { Said = Tri.Yes, Readings = readings })));
        return new Blank($"{part.Part}: is there", on => Standing.With(on, part with { Said = Tri.Unknown, Readings = JobPart.Nothing }),
            [on => Standing.With(on, part with { Said = Tri.No, Readings = JobPart.Nothing }), .. there],
            MayContradict: false, (other, self) => other.On(self, part.Part, null));
    }

    /// <summary>There may be one more member, anywhere.</summary>
    private Blank Rest(JobList list, Reads reads)
    {
        var above = job.Parts.First(part => part.Part.Kind.Name == list.Kind.Above).Part;
        IEnumerable<Part> more = list.Kind.Many == Many.Ordered
            ? Enumerable.Range(0, job.Parts.Count(part => part.Part.Kind == list.Kind) + 1)
                .Select(place => new Part(list.Kind, above, index: (place * 2) + 1))
            : list.Kind.Places.Select(place => new Part(list.Kind, above, place, 99));
        var members = more.SelectMany(part => Filled(part, reads).Select(readings =>
            (Func<Job, Job>)(on =>
                on with
                {
                    Parts = [.. on.Parts.Where(one => one.Part.Kind != list.Kind || !one.Part.IsOther),
                new JobPart(part, Tri.Yes, list.At, readings)]
                })));
        return new Blank($"{list.Kind.Name}: all seen", on => Losses.Open(on, list),
            [on => on with { Parts = [.. on.Parts.Where(one => one.Part.Kind != list.Kind || !one.Part.IsOther)] }, .. members],
            MayContradict: false, (other, self) =>
                other.On(self, new Part(list.Kind, above, isOther: true), null) || self.Kind == list.Kind);
    }

    private Blank Code(string discipline) => new($"{discipline} code",
        on => on with { Codes = on.Codes.Where(code => code.Key != discipline).ToDictionary(StringComparer.Ordinal) },
        [.. book.Vocabulary.Discipline(discipline)!.Families.Where(family =>
            Losses.WouldBeTried(book.Vocabulary.Discipline(discipline)!, family.Name, job.Metric))
            .SelectMany(family => Editions(discipline, family.Name).Select(year => (Func<Job, Job>)(on => on with
            {
                Codes = on.Codes.Append(new(discipline,
                    new StatedCode(family.Name, year, "", At.Nowhere, InBook: true)))
                    .ToDictionary(StringComparer.Ordinal),
            })))],
        MayContradict: false, (reads, _) => reads.Disciplines.Contains(discipline));

    private Blank Method() => new("method", on => on with { Method = null },
        [.. book.Vocabulary.Methods
            .Where(method =>
                !job.Parts.Any(part => part.Said == Tri.Yes ? method.RulesOut.Contains(part.Part.Kind.Name)
                : part.Said == Tri.No && method.Has.Contains(part.Part.Kind.Name)))
            .Select(method => (Func<Job, Job>)(on => on with { Method = method }))],
        MayContradict: false, (reads, _) => reads.Method);

    private IEnumerable<int?> Editions(string discipline, string family) =>
        family == "none" ? [null] : CodeDrawer.Years(book, discipline, family) is { Count: > 0 } years
            ? years.Select(year => (int?)year) : [2021];

    /// <summary>No part stands on it, and no method says that it must be there.</summary>
    private bool MayBeGone(PartKind kind) =>
        kind.MayBeAbsent && !kind.IsList && !room.Method.Has.Contains(kind.Name)
        && !room.Method.RulesOut.Contains(kind.Name)
        && !book.Vocabulary.Kinds.Any(other => other.Above == kind.Name);

    private IEnumerable<IReadOnlyDictionary<string, IReadOnlyList<Reading>>> Filled(Part part, Reads reads)
    {
        IEnumerable<Dictionary<string, IReadOnlyList<Reading>>> all = [new(StringComparer.Ordinal)];
        return part.Kind.Readings.Where(reading => reads.Has(part.Kind.Name, reading.Name)).Aggregate(all, (sets, reading) =>
        {
            var values = _values.Of(part.Kind, reading, Truth(part, reading.Name));
            return sets.SelectMany(set =>
                values.Select(value => new Dictionary<string,
                IReadOnlyList<Reading>>(set, StringComparer.Ordinal)
                { [reading.Name] = [value] }));
        });
    }

    private TrueValue? Truth(Part part, string reading) => part.Kind.IsList ? null
        : room.Of(part.Kind.Name).Single(one => one.Place == part.Place).Values.GetValueOrDefault(reading);

    private static Job Put(Job on, Part part, string reading, Reading? value)
    {
        var old = on.Parts.First(one => one.Part == part);
        var readings = old.Readings.Where(one => one.Key != reading).ToDictionary(StringComparer.Ordinal);
        if (value is not null)
        {
            readings[reading] = [value];
        }

        return Standing.With(on, old with { Readings = readings });
    }
}
