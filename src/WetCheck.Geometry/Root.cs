using System.Numerics;
using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>Square roots of fractions: exact where there is one, else bounds a millionth of a millionth apart.</summary>
internal static class Root
{
    private static readonly BigInteger Scale = BigInteger.Pow(10, 12);

    /// <summary>Bounds of √(a² + b²) for two stretches of which neither goes below zero.</summary>
    public static Interval OfSumOfSquares(Interval a, Interval b)
    {
        var sum = Interval.Product(a, a) + Interval.Product(b, b);
        return new Interval(sum.Lo is { } lo ? Of(lo).Lo : null, sum.Hi is { } hi ? Of(hi).Hi : null);
    }

    public static Interval Of(Rational square)
    {
        var (n, d) = (Whole(square.Numerator), Whole(square.Denominator));
        if (n * n == square.Numerator && d * d == square.Denominator)
        {
            return Interval.At(new Rational(n, d));
        }

        var below = Whole((square * new Rational(Scale * Scale, 1)).Floor());
        return new Interval(new Rational(below, Scale), new Rational(below + 1, Scale));
    }

    /// <summary>The whole root at or below, by Newton's steps from above.</summary>
    private static BigInteger Whole(BigInteger square)
    {
        if (square < 2)
        {
            return square;
        }

        var root = BigInteger.One << (int)((square.GetBitLength() / 2) + 1);
        while (true)
        {
            var next = (root + (square / root)) / 2;
            if (next >= root)
            {
                return root;
            }

            root = next;
        }
    }
}
