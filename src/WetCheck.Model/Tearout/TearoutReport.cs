namespace WetCheck.Model;

/// <summary>What the old work's look accounts for. Nothing here is a probability: sets that fit equally stand side by side.</summary>
/// <param name="Signs">Everything seen that some cause of the book accounts for.</param>
/// <param name="Causes">Every cause of the book, in order of its number.</param>
/// <param name="Sets">The smallest sets of fitting causes that account for all that any of them can; empty: none fits.</param>
/// <param name="Leftover">Signs that no fitting cause accounts for.</param>
/// <param name="Gate">Cautions before the first blow that this job does not rule out.</param>
/// <param name="Expected">What to expect inside.</param>
/// <param name="Tests">Those for the symptom, in order, with their results.</param>
public sealed record TearoutReport(
    IReadOnlyList<Sign> Signs,
    IReadOnlyList<CauseSeen> Causes,
    IReadOnlyList<IReadOnlyList<CauseSeen>> Sets,
    IReadOnlyList<Sign> Leftover,
    IReadOnlyList<Rule> Gate,
    IReadOnlyList<Expected> Expected,
    IReadOnlyList<TestSeen> Tests)
{
    /// <summary>In every smallest set.</summary>
    public IEnumerable<CauseSeen> InAll => Sets.Count == 0 ? [] : Sets[0].Where(cause => Sets.All(set => set.Contains(cause)));

    /// <summary>In some smallest set.</summary>
    public IEnumerable<CauseSeen> InSome => Causes.Where(cause => Sets.Any(set => set.Contains(cause)));
}

/// <summary>One reading of the old work, as told.</summary>
public sealed record Sign(Part Part, Fact Fact);

/// <summary>A cause held against what was seen.</summary>
/// <param name="Signs">Seen, and accounted for by it.</param>
/// <param name="Missing">Given or needed, and not seen yet.</param>
/// <param name="Against">Seen, and ruling it out.</param>
public sealed record CauseSeen(Cause Cause, Fit Fit, IReadOnlyList<Sign> Signs, IReadOnlyList<Condition> Missing,
    IReadOnlyList<Sign> Against);

/// <summary>All it needs was seen; something that speaks for it was, and nothing against it; nothing was; something rules it out.</summary>
public enum Fit { Fits, MayBe, Unseen, RuledOut }

/// <param name="Result">Null: not done.</param>
/// <param name="Wet">Unknown: not done.</param>
public sealed record TestSeen(LeakTest Test, Sign? Result, Tri Wet);
