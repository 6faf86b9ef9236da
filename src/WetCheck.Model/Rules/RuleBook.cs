namespace WetCheck.Model;

/// <summary>A dated set of rules with its vocabulary, sources and words.</summary>
/// <param name="Words">Headings and operators' sentences: language, then key.</param>
/// <param name="Lists">Templates by name: <c>punch.html</c>.</param>
public sealed record RuleBook(
    string Name,
    string Date,
    Vocabulary Vocabulary,
    IReadOnlyList<Rule> Rules,
    IReadOnlyDictionary<string, IReadOnlyList<SourceEntry>> Sources,
    IReadOnlyList<int> RetiredNumbers,
    IReadOnlyDictionary<string, IReadOnlyDictionary<string, string>> Words,
    IReadOnlyDictionary<string, string> Lists)
{
    /// <summary>Files of local changes that this book was made with, in their order; none: the base.</summary>
    public IReadOnlyList<LocalChanges> Local { get; init; } = [];

    /// <summary>Weights and yields.</summary>
    public Materials Materials { get; init; } = Materials.None;

    /// <summary>How old work fails, by number.</summary>
    public IReadOnlyList<Cause> Causes { get; init; } = [];

    /// <summary>What to do before old work is opened.</summary>
    public Opening Opening { get; init; } = Opening.None;

    public Rule? Rule(string id) => Rules.FirstOrDefault(rule => rule.Id == id);

    public Rule? Rule(int number) => Rules.FirstOrDefault(rule => rule.Number == number);
}

/// <summary>Who says so.</summary>
/// <param name="Of">The code family this entry speaks for; null: any.</param>
public sealed record SourceEntry(string Row, string Publisher, string Document, string Section, string Editions,
    string? Of, SourceStatus Status)
{
    /// <summary>Of a local change: the file that says it; else empty.</summary>
    public string GivenIn { get; init; } = "";
}

/// <summary>A file of local changes.</summary>
/// <param name="Name">Whose they are, as the file says.</param>
/// <param name="File">As the job names it.</param>
/// <param name="Count">How many changes.</param>
public sealed record LocalChanges(string Name, string Date, string File, int Count);

/// <summary>How sure we are of the value. Everything but <see cref="Seen"/> is said in every output.</summary>
public enum SourceStatus { Seen, SecondHand, FromMemory, Computed, Practice }

/// <summary>A job and what a rule must say of it.</summary>
/// <param name="Job">A job file, as text with its own place.</param>
/// <param name="Expect">By place name, empty for a part without one: <c>correction on paper</c>, <c>yes</c>, <c>shown</c>.</param>
/// <param name="Asks">Questions that must be among the looks, as <c>kind.reading</c>.</param>
public sealed record RuleCase(string Rule, string Name, string Job, IReadOnlyDictionary<string, string> Expect,
    IReadOnlyList<string> Asks, At At);
