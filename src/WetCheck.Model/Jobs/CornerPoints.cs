namespace WetCheck.Model;

/// <summary>Corners of a floor one after the other, either way round; inches from the left wall and from the entry, exact.</summary>
public sealed class CornerPoints(IReadOnlyList<(Rational FromLeft, Rational FromEntry)> corners) : IEquatable<CornerPoints>
{
    public IReadOnlyList<(Rational FromLeft, Rational FromEntry)> All { get; } = corners;

    /// <summary>Equal where the same corners stand in the same order.</summary>
    public bool Equals(CornerPoints? other) => other is not null && All.SequenceEqual(other.All);

    public override bool Equals(object? obj) => Equals(obj as CornerPoints);

    public override int GetHashCode() => All.Aggregate(0, HashCode.Combine);
}
