namespace WetCheck.Model;

/// <summary>A stretch of numbers; a missing end is without bound. Exact.</summary>
/// <param name="LoOpen">The lower end itself is left out.</param>
/// <param name="HiOpen">The upper end itself is left out.</param>
public readonly record struct Interval(Rational? Lo, Rational? Hi, bool LoOpen = false, bool HiOpen = false)
{
    public static Interval Everything => default;

    public static Interval At(Rational value) => new(value, value);

    public static Interval AtLeast(Rational value) => new(value, null);

    public static Interval AtMost(Rational value) => new(null, value);

    public bool IsPoint => Lo is { } lo && Hi is { } hi && lo == hi;

    public bool IsEmpty => Lo is { } lo && Hi is { } hi && (lo > hi || (lo == hi && (LoOpen || HiOpen)));

    public bool Contains(Rational value) =>
        (Lo is not { } lo || value > lo || (value == lo && !LoOpen)) && (Hi is not { } hi || value < hi || (value == hi && !HiOpen));

    public bool Contains(Interval other) => Intersect(other) == other;

    public Interval Widen(Rational by) => this with { Lo = Lo - by, Hi = Hi + by };

    public Interval Intersect(Interval other)
    {
        var (lo, loOpen) = Lo is null || other.Lo > Lo ? (other.Lo, other.LoOpen)
            : other.Lo is null || Lo > other.Lo ? (Lo, LoOpen) : (Lo, LoOpen || other.LoOpen);
        var (hi, hiOpen) = Hi is null || other.Hi < Hi ? (other.Hi, other.HiOpen)
            : other.Hi is null || Hi < other.Hi ? (Hi, HiOpen) : (Hi, HiOpen || other.HiOpen);
        return new Interval(lo, hi, loOpen, hiOpen);
    }

    public static Interval operator +(Interval a, Interval b) => new(a.Lo + b.Lo, a.Hi + b.Hi, a.LoOpen || b.LoOpen, a.HiOpen || b.HiOpen);

    public static Interval operator -(Interval a) => new(-a.Hi, -a.Lo, a.HiOpen, a.LoOpen);

    public static Interval operator -(Interval a, Interval b) => a + -b;

    /// <summary>Product of two stretches of which neither goes below zero.</summary>
    public static Interval Product(Interval a, Interval b)
    {
        a = a.Intersect(AtLeast(0));
        b = b.Intersect(AtLeast(0));

        // Where one of them may be zero the product may, whether or not the other's end is left out.
        var zero = a.Contains(0) || b.Contains(0);
        var hi = a.Hi * b.Hi;
        return new Interval(a.Lo * b.Lo, hi, !zero && (a.LoOpen || b.LoOpen), !(zero && hi == 0) && (a.HiOpen || b.HiOpen));
    }

    /// <summary>A rise over a run that is above zero.</summary>
    public static Interval Quotient(Interval rise, Interval run)
    {
        if (run.Lo is not { Sign: > 0 } runLo)
        {
            return Everything;
        }

        Rational? Over(Rational? value, bool widest) => value is not { } v ? null
            : (v.Sign < 0) == widest ? (run.Hi is { } far ? v / far : 0) : v / runLo;
        return new Interval(Over(rise.Lo, widest: false), Over(rise.Hi, widest: true), rise.LoOpen, rise.HiOpen);
    }

    public static Interval Min(Interval a, Interval b) =>
        new(Least(a.Lo, b.Lo), a.Hi is null ? b.Hi : b.Hi is null ? a.Hi : Rational.Min(a.Hi.Value, b.Hi.Value));

    public static Interval Max(Interval a, Interval b) => -Min(-a, -b);

    private static Rational? Least(Rational? a, Rational? b) => a is { } x && b is { } y ? Rational.Min(x, y) : null;
}
