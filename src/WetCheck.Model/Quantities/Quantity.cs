namespace WetCheck.Model;

/// <summary>An exact amount in the base unit of its measure (see <see cref="Model.Measure"/>).</summary>
/// <param name="Typed">The unit it was written in, so that it is shown back in it.</param>
public readonly record struct Quantity(Measure Measure, Rational Value, Unit Typed)
{
    /// <summary>Equal amounts are equal whatever unit they were written in.</summary>
    public bool Equals(Quantity other) => Measure == other.Measure && Value == other.Value;

    public override int GetHashCode() => HashCode.Combine(Measure, Value);

    public static Quantity Of(Rational number, Unit unit) => new(unit.Measure, unit.ToBase(number), unit);
}
