namespace WetCheck.Model;

/// <summary>The values a number may have: as read, and within what the tool can tell. The band always holds the other.</summary>
public readonly record struct Spread(Interval AsRead, Interval Band)
{
    public static Spread Everything => default;

    public static Spread Exactly(Rational value) => new(Interval.At(value), Interval.At(value));

    public static Spread Within(Interval bounds) => new(bounds, bounds);

    public static Spread Read(Rational value, Rational halfMark) => new(Interval.At(value), Interval.At(value).Widen(halfMark));

    public bool IsUnknown => AsRead == Interval.Everything;

    public Spread Intersect(Interval bounds) => new(AsRead.Intersect(bounds), Band.Intersect(bounds));

    public Spread Map(Spread other, Func<Interval, Interval, Interval> sum) => new(sum(AsRead, other.AsRead), sum(Band, other.Band));

    public static Spread operator +(Spread a, Spread b) => new(a.AsRead + b.AsRead, a.Band + b.Band);

    public static Spread operator -(Spread a, Spread b) => new(a.AsRead - b.AsRead, a.Band - b.Band);

    public static Spread operator -(Spread a) => new(-a.AsRead, -a.Band);
}
