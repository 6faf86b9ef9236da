using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>
/// One way things may stand that decides which versions are in force: a code, a stretch or choice of each deciding fact,
/// an answer to each deciding test. It holds for every condition of the rule alike.
/// </summary>
internal sealed class World
{
    public static readonly World Real = new();

    private readonly Dictionary<string, CodeRange> _codes = new(StringComparer.Ordinal);
    private readonly Dictionary<FactId, Known> _facts = [];
    private readonly Dictionary<Part, Tri> _presence = [];
    private readonly Dictionary<(Condition, Part), Tri> _tests = [];

    public IReadOnlyDictionary<string, CodeRange> Codes => _codes;

    public IReadOnlyList<CodeRange>? CodesOf(string discipline) => _codes.TryGetValue(discipline, out var code) ? [code] : null;

    public Known Of(Fact fact, bool onPaper) => _facts.TryGetValue(fact.Id, out var known) ? known : fact.Given(onPaper);

    public bool Settles(Fact fact) => _facts.ContainsKey(fact.Id);

    public Tri Presence(PartState state) => _presence.TryGetValue(state.Part, out var exists) ? exists : state.Exists;

    public Tri? Test(Condition condition, Part part) => _tests.TryGetValue((condition, part), out var answer) ? answer : null;

    public World WithCode(string discipline, CodeRange code) => Copy(copy => copy._codes[discipline] = code);

    public World WithFact(FactId fact, Known known) => Copy(copy => copy._facts[fact] = known);

    public World WithPresence(Part part, Tri exists) => Copy(copy => copy._presence[part] = exists);

    public World WithTest(Condition condition, Part part, Tri answer) => Copy(copy => copy._tests[(condition, part)] = answer);

    private World Copy(Action<World> change)
    {
        var copy = new World();
        foreach (var (key, value) in _codes)
        {
            copy._codes[key] = value;
        }

        foreach (var (key, value) in _facts)
        {
            copy._facts[key] = value;
        }

        foreach (var (key, value) in _presence)
        {
            copy._presence[key] = value;
        }

        foreach (var (key, value) in _tests)
        {
            copy._tests[key] = value;
        }

        change(copy);
        return copy;
    }
}
