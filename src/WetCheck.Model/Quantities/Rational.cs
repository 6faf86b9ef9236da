using System.Globalization;
using System.Numerics;

namespace WetCheck.Model;

/// <summary>An exact fraction in lowest terms, denominator above zero. <c>default</c> is zero.</summary>
public readonly struct Rational : IEquatable<Rational>, IComparable<Rational>
{
    private readonly BigInteger _denominatorLessOne;

    public Rational(BigInteger numerator, BigInteger denominator)
    {
        if (denominator.IsZero)
        {
            throw new DivideByZeroException();
        }

        var divisor = BigInteger.GreatestCommonDivisor(numerator, denominator) * denominator.Sign;
        Numerator = numerator / divisor;
        _denominatorLessOne = (denominator / divisor) - 1;
    }

    public BigInteger Numerator { get; }

    public BigInteger Denominator => _denominatorLessOne + 1;

    public static Rational Zero => default;

    public int Sign => Numerator.Sign;

    public Rational Abs => Sign < 0 ? -this : this;

    /// <summary>For drawing and for roots only; never for a verdict.</summary>
    public double Approximate => (double)Numerator / (double)Denominator;

    public static implicit operator Rational(int value) => new(value, 1);

    public static implicit operator Rational(decimal value)
    {
        var scale = value.Scale;
        return new Rational(new BigInteger(value * Power(scale)), BigInteger.Pow(10, scale));
    }

    public static Rational operator +(Rational a, Rational b) =>
        new((a.Numerator * b.Denominator) + (b.Numerator * a.Denominator), a.Denominator * b.Denominator);

    public static Rational operator -(Rational a, Rational b) => a + -b;

    public static Rational operator -(Rational a) => new(-a.Numerator, a.Denominator);

    public static Rational operator *(Rational a, Rational b) => new(a.Numerator * b.Numerator, a.Denominator * b.Denominator);

    public static Rational operator /(Rational a, Rational b) => new(a.Numerator * b.Denominator, a.Denominator * b.Numerator);

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

    public int CompareTo(Rational other) => (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator);

    public bool Equals(Rational other) => Numerator == other.Numerator && _denominatorLessOne == other._denominatorLessOne;

    public override bool Equals(object? obj) => obj is Rational other && Equals(other);

    public override int GetHashCode() => HashCode.Combine(Numerator, _denominatorLessOne);

    public override string ToString() => Denominator.IsOne
        ? Numerator.ToString(CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"{Numerator}/{Denominator}");

    private static decimal Power(int scale)
    {
        var power = 1m;
        for (var i = 0; i < scale; i++)
        {
            power *= 10m;
        }

        return power;
    }
}
