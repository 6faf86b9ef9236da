using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The facts of one job, worked out when asked for and kept.</summary>
internal sealed class JobFacts
{
    private readonly Job _job;
    private readonly Vocabulary _vocabulary;
    private readonly ReadFact _read;
    private readonly Dictionary<string, JobPart> _byId;
    private readonly Dictionary<Part, IReadOnlyDictionary<string, Fact>> _facts = [];

    public JobFacts(Job job, Vocabulary vocabulary)
    {
        _job = job;
        _vocabulary = vocabulary;
        _read = new ReadFact(vocabulary.Tools.FirstOrDefault(tool => tool.Marks.ContainsKey(Measure.Slope)));
        _byId = job.Parts.ToDictionary(part => part.Part.Id, StringComparer.Ordinal);
        Presence = new Presence(job);
    }

    public Presence Presence { get; }

    /// <summary>All facts of a part, derived ones too, by name of the reading. Conclusions are not facts yet.</summary>
    public IReadOnlyDictionary<string, Fact> Of(JobPart part)
    {
        if (!_facts.TryGetValue(part.Part, out var facts))
        {
            _facts[part.Part] = facts = part.Part.Kind.Readings
                .Where(kind => kind.Is != Form.Conclusion)
                .Select(kind => Fact(part, kind))
                .ToDictionary(fact => fact.Kind.Name, StringComparer.Ordinal);
        }

        return facts;
    }

    /// <summary>A fact of the only part of a kind; null where the vocabulary has none.</summary>
    public Fact? Of(string kind, string reading) => _byId.TryGetValue(kind, out var part) ? Read(part, reading) : null;

    /// <summary>The parts of a kind.</summary>
    public IEnumerable<JobPart> PartsOf(string kind) => _job.Parts.Where(part => part.Part.Kind.Name == kind);

    /// <summary>A fact as read, before geometry adds other ways to it.</summary>
    public Fact? Read(JobPart part, string reading) => part.Part.Kind.Find(reading) is { Derived: false } kind ? Typed(part, kind) : null;

    /// <summary>Whether a question about a kind can be answered at this stop.</summary>
    public Sight SightOf(string kind, string reading) => _job.SightOf(_vocabulary.Kind(kind)?.Find(reading)?.Layer);

    public Surroundings Surroundings() =>
        new(PossibleMethods.Of(_job, _vocabulary), PossibleCodesOf.All(_job, _vocabulary),
        LevelsOf.Job(_job, _vocabulary, this));

    private Fact Fact(JobPart part, ReadingKind kind)
    {
        var typed = Typed(part, kind);
        return kind.Derived ? Derived.Of(part.Part, kind, this) ?? typed
            : Derived.Of(part.Part, kind, this) is { } also ? typed with { Also = also }
            : typed;
    }

    private Fact Typed(JobPart part, ReadingKind kind) =>
        _read.Of(part.Part, kind, part.Of(kind.Name), _job.SightOf(kind.LayerOf(part.Part.Place)));
}
