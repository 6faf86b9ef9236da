using System.Runtime.CompilerServices;

namespace WetCheck.Model;

/// <summary>One requirement of the trade, or a conclusion, a caution, a note.</summary>
/// <param name="Id">Chapter and name: <c>liner/turn-up</c>.</param>
/// <param name="Number">Permanent, never used again.</param>
/// <param name="Part">The kind of part it speaks of.</param>
/// <param name="Rows">Rows of <c>rules/sources.yaml</c>.</param>
/// <param name="YieldsTo">Id of a rule; where both fail on one part, this one stands under "also".</param>
/// <param name="Texts">By language.</param>
public sealed record Rule(
    string Id,
    int Number,
    PartKind Part,
    Condition? When,
    RuleBody Body,
    IReadOnlyList<RuleVersion> Versions,
    IReadOnlyList<string> Rows,
    string? YieldsTo,
    Severity Severity,
    string WorkOf,
    IReadOnlyDictionary<string, RuleTexts> Texts,
    At At)
{
    /// <summary>One of each stands in a book: which it is decides, not what it says.</summary>
    public bool Equals(Rule? other) => ReferenceEquals(this, other);

    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    public string Chapter => Id[..Id.IndexOf('/', StringComparison.Ordinal)];

    public RuleTexts In(string language) => Texts.TryGetValue(language, out var texts) ? texts : Texts["en"];

    /// <summary>Rows of the rule as a whole, then those of its versions.</summary>
    public IEnumerable<string> AllRows => Rows.Concat(Versions.SelectMany(version => version.Rows)).Distinct();

    /// <summary>The readings its conditions test, each once.</summary>
    public IEnumerable<ReadingKind> Readings => Conditions()
        .Select(condition =>
            condition switch
            {
                Condition.Is choice => choice.Path.Reading,
                Condition.Compare compare => compare.Path.Reading,
                _ => null
            })
        .OfType<ReadingKind>().Distinct();

    /// <summary>Every condition of the rule, in its body and its versions.</summary>
    public IEnumerable<Condition> Conditions() => new[] { When, Body is RuleBody.Require require ? require.Holds : null }
        .Concat(Versions.SelectMany(version => new[] { version.When, version.Require }))
        .OfType<Condition>()
        .SelectMany(condition => condition.Parts());
}

/// <summary>What a rule does.</summary>
public abstract record RuleBody
{
    private RuleBody()
    {
    }

    /// <summary>Owes a look while it is open. <paramref name="Holds"/> is null where the versions carry all requirements.</summary>
    public sealed record Require(Condition? Holds) : RuleBody;

    /// <summary>Fills a yes or no reading of its part, and of the parts above of the named kinds.</summary>
    public sealed record Conclude(ReadingKind Reading, IReadOnlyList<string> Climbs) : RuleBody;

    /// <summary>
    /// Shown from one stop until another, unless its condition is No. Stops that a method does not have count as passed
    /// by.
    /// </summary>
    public sealed record Caution(string? From, string Until) : RuleBody;

    /// <summary>Shown when its condition is Yes.</summary>
    public sealed record Note : RuleBody;
}

/// <summary>A form of a rule with its own condition. All in force at once must hold together.</summary>
/// <param name="When">Null: always in force.</param>
/// <param name="Limit">Stands in for <c>limit</c> in the rule's requirement.</param>
/// <param name="Require">A requirement of its own.</param>
public sealed record RuleVersion(Condition? When, Quantity? Limit, Condition? Require, IReadOnlyList<string> Rows, At At);

/// <summary>A deadline, hardest first.</summary>
public enum Severity { Stop, BeforeCover, BeforeSignOff, TouchUp }

/// <summary>The rule's own words in one language. Slots in braces are filled for each finding.</summary>
/// <param name="One">What is wrong, one part: "liner too low".</param>
/// <param name="Many">The same of several, with <c>{count}</c>; empty: as for one.</param>
/// <param name="Say">Of a caution: one line of 60. Of a note: the note.</param>
/// <param name="Two">Of a caution: its two sentences.</param>
/// <param name="Seen">For the owner: what was found.</param>
/// <param name="Ask">For the owner: the question.</param>
/// <param name="Good">For the owner: a good answer.</param>
/// <param name="Helper">For the helper, where it differs from the fix; else empty.</param>
/// <param name="See">For the owner: what to ask to see while nothing is known of it; else empty.</param>
public sealed record RuleTexts(string One, string Many, string Say, string Two, string Why, string Fix, string Seen,
    string Ask, string Good, string Helper, string See = "");
