using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Tells some of what is true of a room, as a job.</summary>
internal sealed class Teller(Vocabulary vocabulary, TrueRoom room, Telling telling, Dice dice)
{
    private static readonly At Nowhere = new("drawn.job.yaml", 1, 1);
    private readonly Tape _tape = new(room, dice);
    private readonly List<JobPart> _parts = [];
    private readonly List<JobList> _lists = [];
    private readonly Dictionary<string, Part> _single = new(StringComparer.Ordinal);

    public Job Job()
    {
        foreach (var kind in vocabulary.Kinds)
        {
            if (kind.IsList)
            {
                List(kind);
            }
            else
            {
                _parts.AddRange(room.Of(kind.Name)
                    .Select(part =>
                    Told(part, kind.Many == Many.One ? Single(kind) : new Part(kind, Above(kind), part.Place))));
            }
        }

        bool? metric = !telling.Plainly && dice.Chance(0.1) ? null : room.Metric;
        var job = new Job("drawn", Nowhere.File, Known(0.6) ? room.Method : null, Known(0.6) ? room.Stage : null, metric,
            Codes(metric), _parts, _lists, null, null, new Dictionary<string, At>());
        return Standing.Settled(job);
    }

    /// <summary>Of what holds for the whole job.</summary>
    private bool Known(double least = 0) => dice.Chance(Math.Max(telling.Focus is null ? least : 0.85, telling.Known));

    private Part Single(PartKind kind) =>
        _single.TryGetValue(kind.Name, out var part) ? part : _single[kind.Name] = new Part(kind, Above(kind));

    private Part? Above(PartKind kind) => kind.Above is { } above ? Single(vocabulary.Kind(above)!)
        : kind == vocabulary.Kinds[0] ? null : Single(vocabulary.Kinds[0]);

    private void List(PartKind kind)
    {
        var all = room.Of(kind.Name).ToList();
        var known = telling.Of(kind.Name);
        var named = kind.WholeWhenGiven ? (dice.Chance(known) ? all : []) : all.Where(_ => dice.Chance(Math.Max(0.5, known))).ToList();
        var whole = named.Count == all.Count
            && (kind.WholeWhenGiven ? all.Count == 0 ? dice.Chance(known) : named.Count > 0 : dice.Chance(known));
        var index = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var member in named)
        {
            var place = member.Place?.Name ?? "";
            var part = new Part(kind, Above(kind), member.Place, index[place] = index.GetValueOrDefault(place) + 1);
            _parts.Add(Told(member, part) with { Said = Tri.Yes });
        }

        _lists.Add(new JobList(kind, whole ? Tri.Yes : Tri.Unknown, Nowhere));
        if (!whole)
        {
            _parts.Add(new JobPart(new Part(kind, Above(kind), isOther: true), Tri.Unknown, Nowhere, JobPart.Nothing));
        }
    }

    private JobPart Told(TruePart part, Part at)
    {
        var known = telling.Of(part.Kind.Name);
        if (!part.Present)
        {
            return new JobPart(at, part.Kind.MayBeAbsent && dice.Chance(known) ? Tri.No : Tri.Unknown, Nowhere, JobPart.Nothing);
        }

        var readings = part.Kind.Readings.Where(kind => part.Values.ContainsKey(kind.Name))
            .Select(kind => (kind.Name, Read: Readings(part.Values[kind.Name], kind, known)))
            .Where(one => one.Read.Count > 0)
            .ToDictionary(one => one.Name, one => one.Read, StringComparer.Ordinal);
        return new JobPart(at, readings.Count > 0 || dice.Chance(known) ? Tri.Yes : Tri.Unknown, Nowhere, readings);
    }

    private IReadOnlyList<Reading> Readings(TrueValue value, ReadingKind kind, double known)
    {
        if (!dice.Chance(known))
        {
            return telling.Plainly || dice.Chance(0.75) ? [] : Unread(value, kind);
        }

        var datum = kind.Is == Form.Height && !telling.Plainly && dice.Chance(0.1) ? OtherDatum(kind) : null;
        return !telling.Plainly && value is (TrueValue.Amount or TrueValue.Level) && dice.Chance(0.05)
            ? [_tape.Bound(value, kind, datum)]
            : _tape.Read(value, kind, datum, twice: dice.Chance(0.25));
    }

    private IReadOnlyList<Reading> Unread(TrueValue value, ReadingKind kind) => dice.Chance(0.6)
        ? [_tape.Exact(value, kind, null, planned: true)]
        : [Tape.Of(new ReadingValue.OfHidden())];

    /// <summary>A level that is there, other than the one asked from and the one that the reading tells.</summary>
    private string? OtherDatum(ReadingKind kind) => dice.Pick([.. vocabulary.Datums
        .Where(datum => datum.Name != kind.Lifts && room.Has(datum.Of)).Select(datum => datum.Name).Prepend(kind.From!)]);

    private Dictionary<string, StatedCode> Codes(bool? metric)
    {
        var stated = new Dictionary<string, StatedCode>(StringComparer.Ordinal);
        foreach (var discipline in vocabulary.Disciplines)
        {
            var code = room.Codes[discipline.Name];
            if (!Losses.WouldBeTried(discipline, code.Family, metric) || Known())
            {
                var edition = telling.Plainly || dice.Chance(0.85) ? code.From : null;
                stated[discipline.Name] = new StatedCode(code.Family, edition, "", Nowhere, InBook: true);
            }
        }

        return stated;
    }
}
