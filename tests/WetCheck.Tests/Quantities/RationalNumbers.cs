using System.Numerics;
using WetCheck.Model;

namespace WetCheck.Tests.Quantities;

public sealed class RationalNumbers
{
    private readonly Random _random = new(42);

    [Fact]
    public void Obey_the_laws_of_arithmetic()
    {
        for (var i = 0; i < 5_000; i++)
        {
            var (a, b, c) = (Any(), Any(), Any());
            (a + b).Should().Be(b + a);
            (a * b).Should().Be(b * a);
            (a + b + c).Should().Be(a + (b + c));
            (a * (b + c)).Should().Be((a * b) + (a * c));
            (a - a).Should().Be(Rational.Zero);
            (a - b + b).Should().Be(a);
            if (b.Sign != 0)
            {
                (a / b * b).Should().Be(a);
            }
        }
    }

    [Fact]
    public void Are_kept_in_lowest_terms_with_a_denominator_above_zero()
    {
        for (var i = 0; i < 5_000; i++)
        {
            var a = Any() * Any();
            (a.Denominator > 0).Should().BeTrue();
            BigInteger.GreatestCommonDivisor(a.Numerator, a.Denominator).IsOne.Should().BeTrue();
        }

        new Rational(2, -4).Should().Be(new Rational(-1, 2));
        default(Rational).Should().Be((Rational)0);
        default(Rational).Denominator.Should().Be(BigInteger.One);
    }

    [Fact]
    public void Are_ordered_as_decimals_are()
    {
        for (var i = 0; i < 5_000; i++)
        {
            var (a, b) = (_random.Next(-10_000, 10_000) / 64m, _random.Next(-10_000, 10_000) / 100m);
            ((Rational)a).CompareTo(b).Should().Be(Math.Sign(a.CompareTo(b)));
            ((Rational)a).Floor().Should().Be((BigInteger)Math.Floor(a));
            ((Rational)a + b).Should().Be((Rational)(a + b));
            Rational.Min(a, b).Should().Be((Rational)Math.Min(a, b));
        }
    }

    [Theory]
    [InlineData("0.1", 1, 10)]
    [InlineData("-2.50", -5, 2)]
    [InlineData("0.0209470139", 209470139, 10000000000)]
    [InlineData("123456789012.25", 493827156049, 4)]
    public void Are_made_from_decimals_exactly(string text, long over, long under) =>
        ((Rational)decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture)).Should().Be(new Rational(over, under));

    [Fact]
    public void Refuse_a_denominator_of_zero()
    {
        var divide = () => new Rational(1, 0);
        divide.Should().Throw<DivideByZeroException>();
    }

    /// <summary>Numbers about the end of a long, where a fraction is kept in another way: it is the same fraction.</summary>
    [Fact]
    public void Are_exact_on_both_sides_of_the_end_of_a_long()
    {
        BigInteger[] ends =
            [.. new BigInteger[] { long.MaxValue, long.MinValue, int.MaxValue, int.MinValue,
            (BigInteger)long.MaxValue * 2, 0 }
            .SelectMany(end => Enumerable.Range(-2, 5).Select(step => end + step))];
        foreach (var (n, d) in ends.SelectMany(n => ends.Where(d => !d.IsZero).Select(d => (n, d))))
        {
            var one = new Rational(n, d);
            (one.Numerator * d).Should().Be(n * one.Denominator);
            (one.Denominator.Sign, BigInteger.GreatestCommonDivisor(one.Numerator, one.Denominator)).Should().Be((1, BigInteger.One));
            one.Sign.Should().Be(n.Sign * d.Sign);
            (-one).Should().Be(new Rational(-n, d));
            foreach (var m in ends)
            {
                var other = new Rational(m, 3);
                Check(one + other, (n * 3) + (m * d), d * 3);
                Check(one - other, (n * 3) - (m * d), d * 3);
                Check(one * other, n * m, d * 3);
                one.CompareTo(other).Should().Be(((n * 3 * d.Sign) - (m * d * d.Sign)).Sign);
                if (!m.IsZero)
                {
                    Check(one / other, n * 3, d * m);
                }
            }
        }

        static void Check(Rational got, BigInteger numerator, BigInteger denominator)
        {
            got.Should().Be(new Rational(numerator, denominator));
            (got.Numerator * denominator).Should().Be(numerator * got.Denominator);
            got.GetHashCode().Should().Be(new Rational(numerator, denominator).GetHashCode());
        }
    }

    [Fact]
    public void Refuse_to_be_parted_by_zero() =>
        FluentActions.Invoking(() => (Rational)1 / Rational.Zero).Should().Throw<DivideByZeroException>();

    private Rational Any() => new(_random.Next(-2_000, 2_000), _random.Next(1, 130));
}
