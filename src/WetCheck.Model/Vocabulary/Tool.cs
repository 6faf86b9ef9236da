using System.Runtime.CompilerServices;

namespace WetCheck.Model;

/// <summary>What a reading is taken with. A count, a choice and a year have no mark.</summary>
/// <param name="Marks">Its smallest mark for each measure it reads.</param>
/// <param name="Metric">The same for a reading in metric units, where it differs: a tape has both.</param>
public sealed record Tool(
    string Name, Words Say, IReadOnlyDictionary<Measure, Quantity> Marks, IReadOnlyDictionary<Measure, Quantity>? Metric = null)
{
    /// <summary>One of each stands in a book: which it is decides, not what it says.</summary>
    public bool Equals(Tool? other) => ReferenceEquals(this, other);

    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>Half the smallest mark, in base units.</summary>
    public Rational HalfMark(Measure measure, bool metric) =>
        metric && Metric is not null && Metric.TryGetValue(measure, out var mark) ? mark.Value / 2
        : Marks.TryGetValue(measure, out mark) ? mark.Value / 2
        : 0;
}
