using System.Runtime.CompilerServices;

namespace WetCheck.Model;

/// <summary>A kind of thing that can be pointed at.</summary>
/// <param name="Stands">Where it stands in the job file, as words of a path: <c>curb</c>, <c>liner.corners</c>.</param>
/// <param name="Many">How many there can be.</param>
/// <param name="Above">The kind it is a part of; <c>job</c> stands above all.</param>
/// <param name="Places">Of <see cref="Many.PerPlace"/> and <see cref="Many.List"/>: where it may be.</param>
/// <param name="MayBeAbsent">Whether "is there one?" is a question. A part above that is absent takes its parts with it.</param>
/// <param name="WholeWhenGiven">Of a list: its line names every member, so that <c>seen: all</c> goes without saying.</param>
/// <param name="Main">The reading that a bare value fills.</param>
public sealed record PartKind(
    string Name,
    string Stands,
    Many Many,
    string? Above,
    IReadOnlyList<Place> Places,
    bool MayBeAbsent,
    bool WholeWhenGiven,
    string? Main,
    IReadOnlyList<ReadingKind> Readings,
    Words One,
    Words Several,
    Words AskPresence,
    Words AskWhole,
    Words Gloss,
    int Order,
    At At)
{
    /// <summary>One of each stands in a book: which it is decides, not what it says.</summary>
    public bool Equals(PartKind? other) => ReferenceEquals(this, other);

    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    public bool IsList => Many is Many.List or Many.Ordered;

    public ReadingKind? Find(string reading) => Readings.FirstOrDefault(kind => kind.Name == reading);
}

public enum Many
{
    One,

    /// <summary>One at each of its places.</summary>
    PerPlace,

    /// <summary>Any number, in no order, each at a place or at none.</summary>
    List,

    /// <summary>Any number, each behind the next.</summary>
    Ordered,
}
