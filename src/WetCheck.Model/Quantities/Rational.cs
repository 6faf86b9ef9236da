using System.Globalization;
using System.Numerics;

namespace WetCheck.Model;

/// <summary>An exact fraction in lowest terms, denominator above zero. <c>default</c> is zero.</summary>
public readonly struct Rational : IEquatable<Rational>, IComparable<Rational>
{
    /// <summary>Of a fraction whose two numbers both lie within a long, as nearly all do; else zeros beside <see cref="_large"/>.</summary>
    private readonly long _numerator;
    private readonly long _denominatorLessOne;
    private readonly Large? _large;

    public Rational(BigInteger numerator, BigInteger denominator)
    {
        if (denominator.IsZero)
        {
            throw new DivideByZeroException();
        }

        var divisor = BigInteger.GreatestCommonDivisor(numerator, denominator) * denominator.Sign;
        (numerator, denominator) = (numerator / divisor, denominator / divisor);
        if (BigInteger.Abs(numerator) <= long.MaxValue && denominator <= long.MaxValue)
        {
            (_numerator, _denominatorLessOne) = ((long)numerator, (long)denominator - 1);
        }
        else
        {
            _large = new Large(numerator, denominator);
        }
    }

    private Rational(long numerator, long denominator) => (_numerator, _denominatorLessOne) = (numerator, denominator - 1);

    public BigInteger Numerator => _large?.Numerator ?? _numerator;

    public BigInteger Denominator => _large?.Denominator ?? Below;

    private long Below => _denominatorLessOne + 1;

    public static Rational Zero => default;

    public int Sign => _large is null ? Math.Sign(_numerator) : _large.Numerator.Sign;

    public Rational Abs => Sign < 0 ? -this : this;

    /// <summary>For drawing and for roots only; never for a verdict.</summary>
    public double Approximate => (double)Numerator / (double)Denominator;

    public static implicit operator Rational(int value) => new((long)value, 1);

    public static implicit operator Rational(decimal value)
    {
        var scale = value.Scale;
        return new Rational(new BigInteger(value * Power(scale)), BigInteger.Pow(10, scale));
    }

    // Products of two longs, and sums of two of those, lie within 128 bits.
    public static Rational operator +(Rational a, Rational b) => AreSmall(a, b)
        ? Lowest(((Int128)a._numerator * b.Below) + ((Int128)b._numerator * a.Below), (Int128)a.Below * b.Below)
        : new((a.Numerator * b.Denominator) + (b.Numerator * a.Denominator), a.Denominator * b.Denominator);

    public static Rational operator -(Rational a, Rational b) => a + -b;

    public static Rational operator -(Rational a) => a._large is null ? new(-a._numerator, a.Below) : new(-a.Numerator, a.Denominator);

    public static Rational operator *(Rational a, Rational b) => AreSmall(a, b)
        ? Lowest((Int128)a._numerator * b._numerator, (Int128)a.Below * b.Below)
        : new(a.Numerator * b.Numerator, a.Denominator * b.Denominator);

    public static Rational operator /(Rational a, Rational b) => AreSmall(a, b)
        ? Lowest((Int128)a._numerator * b.Below, (Int128)a.Below * b._numerator)
        : new(a.Numerator * b.Denominator, a.Denominator * b.Numerator);

    public static bool operator <(Rational a, Rational b) => a.CompareTo(b) < 0;

    public static bool operator >(Rational a, Rational b) => a.CompareTo(b) > 0;

    public static bool operator <=(Rational a, Rational b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Rational a, Rational b) => a.CompareTo(b) >= 0;

    public static bool operator ==(Rational a, Rational b) => a.Equals(b);

    public static bool operator !=(Rational a, Rational b) => !a.Equals(b);

    public static Rational Min(Rational a, Rational b) => a <= b ? a : b;

    public static Rational Max(Rational a, Rational b) => a >= b ? a : b;

    /// <summary>The whole number at or below.</summary>
    public BigInteger Floor() => BigInteger.Divide(Numerator - (((Numerator % Denominator) + Denominator) % Denominator), Denominator);

    public int CompareTo(Rational other) => AreSmall(this, other)
        ? ((Int128)_numerator * other.Below).CompareTo((Int128)other._numerator * Below)
        : (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator);

    public bool Equals(Rational other) =>
        _numerator == other._numerator && _denominatorLessOne == other._denominatorLessOne && Equals(_large, other._large);

    public override bool Equals(object? obj) => obj is Rational other && Equals(other);

    public override int GetHashCode() => HashCode.Combine(_numerator, _denominatorLessOne, _large);

    public override string ToString() => Denominator.IsOne
        ? Numerator.ToString(CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"{Numerator}/{Denominator}");

    private static bool AreSmall(Rational a, Rational b) => a._large is null && b._large is null;

    /// <param name="denominator">Of any sign.</param>
    private static Rational Lowest(Int128 numerator, Int128 denominator)
    {
        if (!IsWithin(numerator) || !IsWithin(denominator) || denominator == 0)
        {
            return new Rational((BigInteger)numerator, (BigInteger)denominator);
        }

        var (above, below) = ((long)numerator, (long)denominator);
        var (divisor, rest) = (Math.Abs(below), Math.Abs(above));
        while (rest != 0)
        {
            (divisor, rest) = (rest, divisor % rest);
        }

        divisor = below < 0 ? -divisor : divisor;
        return new Rational(above / divisor, below / divisor);
    }

    /// <summary>The least long is left out: it has no positive twin.</summary>
    private static bool IsWithin(Int128 value) => value >= -long.MaxValue && value <= long.MaxValue;

    private static decimal Power(int scale)
    {
        var power = 1m;
        for (var i = 0; i < scale; i++)
        {
            power *= 10m;
        }

        return power;
    }

    /// <summary>A fraction of which one number is past a long.</summary>
    private sealed record Large(BigInteger Numerator, BigInteger Denominator);
}
