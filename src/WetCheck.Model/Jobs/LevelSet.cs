namespace WetCheck.Model;

/// <summary>
/// Levels of a floor read in one go, one fact together: inches from the left wall, from the entry, and up from any one
/// level line, exact.
/// </summary>
public sealed class LevelSet(IReadOnlyList<(Rational FromLeft, Rational FromEntry, Rational Up)> points) : IEquatable<LevelSet>
{
    public IReadOnlyList<(Rational FromLeft, Rational FromEntry, Rational Up)> All { get; } = points;

    /// <summary>Equal where the same readings stand in the same order.</summary>
    public bool Equals(LevelSet? other) => other is not null && All.SequenceEqual(other.All);

    public override bool Equals(object? obj) => Equals(obj as LevelSet);

    public override int GetHashCode() => All.Aggregate(0, HashCode.Combine);
}
