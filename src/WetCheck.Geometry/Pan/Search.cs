namespace WetCheck.Geometry;

/// <summary>Least places of functions that first fall and then rise.</summary>
internal static class Search
{
    private static readonly double s_golden = (Math.Sqrt(5) - 1) / 2;

    /// <returns>Where the function is least between the two.</returns>
    public static double Least(Func<double, double> of, double from, double to)
    {
        var (a, b) = (to - (s_golden * (to - from)), from + (s_golden * (to - from)));
        var (atA, atB) = (of(a), of(b));
        for (var step = 0; step < 80; step++)
        {
            if (atA <= atB)
            {
                (to, b, atB) = (b, a, atA);
                a = to - (s_golden * (to - from));
                atA = of(a);
            }
            else
            {
                (from, a, atA) = (a, b, atB);
                b = from + (s_golden * (to - from));
                atB = of(b);
            }
        }

        return (from + to) / 2;
    }

    /// <summary>The last value for which something that holds at the first still holds.</summary>
    public static double Last(Predicate<double> holds, double from, double to)
    {
        for (var step = 0; step < 100; step++)
        {
            var half = (from + to) / 2;
            (from, to) = holds(half) ? (half, to) : (from, half);
        }

        return from;
    }
}
