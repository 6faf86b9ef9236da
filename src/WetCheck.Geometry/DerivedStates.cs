using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The states of a job, kept, so that a change works out anew only what it may touch.</summary>
public sealed class DerivedStates
{
    private readonly Vocabulary _vocabulary;
    private readonly Dictionary<string, PartState> _states;

    public DerivedStates(Job job, Vocabulary vocabulary)
    {
        _vocabulary = vocabulary;
        Job = job;
        _states = Derive.From(job, vocabulary).ToDictionary(state => state.Part.Id, StringComparer.Ordinal);
    }

    public Job Job { get; private set; }

    public IEnumerable<PartState> All => Job.Parts.Select(part => _states[part.Part.Id]);

    /// <returns>The states that no longer hold, and those that hold instead.</returns>
    public (IReadOnlyList<PartState> Gone, IReadOnlyList<PartState> Come) Change(Job job)
    {
        var before = Job;
        job = KeptParts.Of(before, job);
        var facts = new JobFacts(job, _vocabulary);
        var old = before.Parts.ToDictionary(part => part.Part.Id, StringComparer.Ordinal);
        var now = job.Parts.Select(part => part.Part.Id).ToHashSet(StringComparer.Ordinal);
        var throughout = before.Method != job.Method || before.Stage != job.Stage;
        var presence = job.Parts.Where(part => !old.TryGetValue(part.Part.Id, out var was) || was.Said != part.Said).Any()
            || job.Parts.Count != before.Parts.Count;
        var (gone, come) = (new List<PartState>(), new List<PartState>());
        foreach (var id in _states.Keys.Where(id => !now.Contains(id)).ToList())
        {
            gone.Add(_states[id]);
            _states.Remove(id);
        }

        // A part that was not touched is worked out anew only where geometry may fill a reading of it from other parts.
        foreach (var part in job.Parts.Where(part => throughout || presence || IsFilled(part.Part) || !Same(old, part)))
        {
            var state = Derive.Of(part, facts);
            if (!_states.TryGetValue(part.Part.Id, out var was) || was.Part != part.Part || !SameState.Of(was, state))
            {
                if (was is not null)
                {
                    gone.Add(was);
                }

                come.Add(_states[part.Part.Id] = state);
            }
        }

        Job = job;
        return (gone, come);
    }

    private static bool Same(Dictionary<string, JobPart> old, JobPart part) =>
        old.TryGetValue(part.Part.Id, out var was) && ReferenceEquals(was, part);

    private static bool IsFilled(Part part) => part.Above is null || Derived.Fills(part.Kind.Name);
}
