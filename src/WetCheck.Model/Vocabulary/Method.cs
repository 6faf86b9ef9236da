using System.Runtime.CompilerServices;

namespace WetCheck.Model;

/// <summary>How the waterproofing is built: layers bottom to top, and the stops between them.</summary>
/// <param name="Stops">In order of the work.</param>
/// <param name="Has">Kinds of part that such a job always has.</param>
/// <param name="RulesOut">Kinds of part that such a job never has.</param>
/// <param name="Asks">Lines of the job file that such a job must answer for, in walking order.</param>
/// <param name="AsksAfter">More of them, which a page asks where there is room.</param>
public sealed record Method(
    string Name,
    Words Say,
    IReadOnlyList<Stop> Stops,
    IReadOnlyList<Layer> Layers,
    IReadOnlyList<string> Has,
    IReadOnlyList<string> RulesOut,
    IReadOnlyList<string> Asks,
    IReadOnlyList<string> AsksAfter,
    At At)
{
    /// <summary>One of each stands in a book: which it is decides, not what it says.</summary>
    public bool Equals(Method? other) => ReferenceEquals(this, other);

    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>From 0; -1 for a stop that it doesn't have.</summary>
    public int IndexOf(string stop)
    {
        for (var at = 0; at < Stops.Count; at++)
        {
            if (Stops[at].Name == stop)
            {
                return at;
            }
        }

        return -1;
    }

    /// <summary>
    /// A part of a kind that is ruled out, or one that stands on it: with the curb goes the ledge at the <c>curb
    /// top</c>.
    /// </summary>
    public bool Never(PartKind kind, Place? place) => RulesOut.Contains(kind.Name) || (place is not null && Never(place));

    /// <summary>A place that is named by a kind that is ruled out: <c>curb top</c>.</summary>
    public bool Never(Place place) => RulesOut.Any(kind => place.Name.StartsWith(kind + " ", StringComparison.Ordinal));
}

/// <summary>The moment before a layer is covered. One name for one stop.</summary>
/// <param name="Say">"before the flood test".</param>
public sealed record Stop(string Name, Words Say);

/// <summary>What is made and then hidden.</summary>
/// <param name="Made">The first stop at which it is there to be seen.</param>
/// <param name="Hidden">The first stop at which it can't be seen any more; null: never.</param>
/// <param name="Cover">Said of a fault that must be mended before it is hidden: "before the bed".</param>
public sealed record Layer(string Name, Words Say, string Made, string? Hidden, Words Cover);

/// <summary>Whether a reading can be had at this stop.</summary>
public enum Sight { ToBeSeen, Hidden, NotBegun }
