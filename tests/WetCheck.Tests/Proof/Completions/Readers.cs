using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Which checks read any of some blanks, worked out once for each part: the completions of a job share their parts.</summary>
internal sealed class Readers(IReadOnlyList<Blank> blanks, ILookup<PartKind, Reads> byPart)
{
    private readonly Dictionary<Part, IReadOnlyList<Reads>> _of = [];

    public IReadOnlyList<(Reads Reads, PartState State)> On(IReadOnlyList<PartState> states) =>
        [.. states.SelectMany(state => Of(state.Part).Select(reads => (reads, state)))];

    private IReadOnlyList<Reads> Of(Part part)
    {
        if (!_of.TryGetValue(part, out var readers))
        {
            _of[part] = readers = [.. byPart[part.Kind].Where(reads => blanks.Any(blank => blank.IsReadBy(reads, part)))];
        }

        return readers;
    }
}
