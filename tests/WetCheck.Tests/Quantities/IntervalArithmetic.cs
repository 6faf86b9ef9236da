using WetCheck.Model;

namespace WetCheck.Tests.Quantities;

/// <summary>A stretch of a sum holds every sum of numbers of its terms, and nothing that could be left out.</summary>
public sealed class IntervalArithmetic
{
    private readonly Random _random = new(11);

    [Fact]
    public void A_sum_a_difference_and_a_negative_hold_every_sample() => Hold((a, b) => true,
        ((a, b) => a + b, (x, y) => x + y),
        ((a, b) => a - b, (x, y) => x - y),
        ((a, _) => -a, (x, _) => -x),
        (Interval.Min, Rational.Min),
        (Interval.Max, Rational.Max));

    [Fact]
    public void A_product_holds_every_sample_at_or_above_zero() =>
        Hold((x, y) => x.Sign >= 0 && y.Sign >= 0, (Interval.Product, (x, y) => x * y));

    [Fact]
    public void A_quotient_holds_every_sample_over_a_run_above_zero() => Hold((_, y) => y.Sign > 0, (Interval.Quotient, (x, y) => x / y));

    [Fact]
    public void An_intersection_holds_what_both_hold()
    {
        for (var i = 0; i < 5_000; i++)
        {
            var (a, b, x) = (Any(), Any(), Number());
            a.Intersect(b).Contains(x).Should().Be(a.Contains(x) && b.Contains(x));
        }
    }

    [Fact]
    public void Ends_of_a_quotient_are_reached()
    {
        Interval.Quotient(new Interval(1, 2), new Interval(4, 8)).Should().Be(new Interval(new Rational(1, 8), new Rational(1, 2)));
        Interval.Quotient(new Interval(-2, -1), new Interval(4, 8)).Should().Be(new Interval(new Rational(-1, 2), new Rational(-1, 8)));
        Interval.Quotient(new Interval(-2, 2), new Interval(4, 8)).Should().Be(new Interval(new Rational(-1, 2), new Rational(1, 2)));
        Interval.Quotient(new Interval(1, 2), new Interval(0, 8)).Should().Be(Interval.Everything);
        Interval.Quotient(new Interval(1, null), Interval.AtLeast(4)).Hi.Should().BeNull();
        Interval.Product(new Interval(1, 2), new Interval(4, 8)).Should().Be(new Interval(4, 16));
        Interval.Product(Interval.AtLeast(2), new Interval(4, 8)).Should().Be(Interval.AtLeast(8));
    }

    [Fact]
    public void Open_ends_are_left_out()
    {
        var open = new Interval(1, 2, LoOpen: true, HiOpen: true);
        open.Contains(1).Should().BeFalse();
        open.Contains(new Rational(3, 2)).Should().BeTrue();
        (open + Interval.At(1)).Contains(3).Should().BeFalse();
        (-open).Contains(-1).Should().BeFalse();
        new Interval(1, 1, HiOpen: true).IsEmpty.Should().BeTrue();
        Interval.At(1).Widen(new Rational(1, 32)).Should().Be(new Interval(new Rational(31, 32), new Rational(33, 32)));
    }

    [Fact]
    public void The_band_of_a_spread_holds_what_was_read_through_sums()
    {
        for (var i = 0; i < 2_000; i++)
        {
            var (a, b) = (Spread.Read(Number().Abs, new Rational(1, 32)), Spread.Read(Number().Abs, new Rational(1, 64)));
            foreach (var sum in new[] { a + b, a - b, -a, a.Map(b, Interval.Min), a.Map(b, Interval.Product), a.Intersect(Any()) })
            {
                (sum.AsRead.IsEmpty || sum.Band.Contains(sum.AsRead)).Should().BeTrue();
            }
        }
    }

    private void Hold(Func<Rational, Rational, bool> where,
        params (Func<Interval, Interval, Interval> Of, Func<Rational, Rational, Rational> At)[] sums)
    {
        for (var i = 0; i < 20_000; i++)
        {
            var (a, b, x, y) = (Any(), Any(), Number(), Number());
            if (!a.Contains(x) || !b.Contains(y) || !where(x, y))
            {
                continue;
            }

            foreach (var (of, at) in sums)
            {
                if (!of(a, b).Contains(at(x, y)))
                {
                    Assert.Fail($"{a} and {b} give {of(a, b)}, which lacks {at(x, y)} of {x} and {y}");
                }
            }
        }
    }

    /// <summary>Small whole ends, so that samples often stand on them; either may be missing or left out.</summary>
    private Interval Any()
    {
        var (lo, hi) = (_random.Next(-6, 7), _random.Next(-6, 7));
        return new Interval(
            _random.Next(5) == 0 ? null : Math.Min(lo, hi), _random.Next(5) == 0 ? null
                : Math.Max(lo, hi), _random.Next(3) == 0, _random.Next(3) == 0);
    }

    private Rational Number() => new(_random.Next(-14, 15), 2);
}
