using System.Runtime.CompilerServices;

namespace WetCheck.Model;

/// <summary>A question about a kind of part.</summary>
/// <param name="Name">Its word in the job file, and the last word of a path.</param>
/// <param name="Is">The form of its answer.</param>
/// <param name="Measure">Of a number; null for a choice.</param>
/// <param name="Choices">Of a choice, in the order they are offered.</param>
/// <param name="From">Of a height: the datum it is asked from.</param>
/// <param name="Lifts">Of a height that says where another datum stands: that datum.</param>
/// <param name="Least">What nature allows at the least, whatever is read; a bound, unlike <paramref name="Believable"/>.</param>
/// <param name="Layer">The layer it belongs to; null: it can be asked at any time.</param>
/// <param name="LayerAt">Places whose reading belongs to another layer.</param>
/// <param name="Derived">Filled by geometry, never typed.</param>
/// <param name="Believable">Outside it the reading is asked, never refused.</param>
public sealed record ReadingKind(
    string Name,
    Form Is,
    Measure? Measure,
    IReadOnlyList<Choice> Choices,
    string? From,
    string? Lifts,
    Quantity? Least,
    string? Layer,
    IReadOnlyDictionary<string, string> LayerAt,
    bool Derived,
    Tool? Tool,
    Effort Effort,
    (Quantity Least, Quantity Most)? Believable,
    Words Ask,
    Words How,
    Words Gloss,
    Words Proof,
    string Example,
    At At)
{
    /// <summary>One of each stands in a book: which it is decides, not what it says.</summary>
    public bool Equals(ReadingKind? other) => ReferenceEquals(this, other);

    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>The question in a few words, where it shares a line with an answer.</summary>
    public Words Brief { get; init; } = Ask;

    /// <summary>The command that asks for it where no rule does: <c>pan</c>; null: a rule asks.</summary>
    public string? AskedBy { get; init; }

    public string? LayerOf(Place? place) => place is not null && LayerAt.TryGetValue(place.Name, out var layer) ? layer : Layer;
}

/// <summary>One answer that may be picked.</summary>
public sealed record Choice(string Key, Words Say);

/// <summary>Forms an answer can take.</summary>
public enum Form
{
    Choice,

    /// <summary>A number of the reading's measure.</summary>
    Amount,

    /// <summary>A length up or down from a datum.</summary>
    Height,

    /// <summary>A drop over a distance, or a slope.</summary>
    Fall,

    /// <summary>Two lengths, and what they were taken between: finished, to studs, overall.</summary>
    Size,

    /// <summary>Two lengths: from the left, from the entry.</summary>
    Point,

    /// <summary>Corners of a floor, each a length from the left and one from the entry.</summary>
    Outline,

    /// <summary>Points of a floor, each two lengths for its place and one for its height; one fact together.</summary>
    Levels,

    /// <summary>Yes or no, filled by rules.</summary>
    Conclusion,
}

/// <summary>What a look costs, least first.</summary>
public enum Effort { Glance, Ask, Touch, Measure, Test, OpenUp }
