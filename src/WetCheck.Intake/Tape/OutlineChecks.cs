using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Whether corners enclose a floor whose walls meet only at their ends. Exact.</summary>
internal static class OutlineChecks
{
    /// <param name="starts">Where each corner was typed.</param>
    /// <returns>Null where all is well.</returns>
    public static Fault? Fault(IReadOnlyList<(Rational X, Rational Y)> corners, IReadOnlyList<int> starts)
    {
        var count = corners.Count;
        if (count < 3 || Enumerable.Range(1, count - 2).All(at => Turn(corners[0], corners[at], corners[at + 1]).Sign == 0))
        {
            return Faults.NoFloor();
        }

        for (var one = 0; one < count; one++)
        {
            for (var other = one + 1; other < count; other++)
            {
                var (a, b, c, d) = (corners[one], corners[(one + 1) % count], corners[other], corners[(other + 1) % count]);
                var areNeighbours = other == one + 1 || (one == 0 && other == count - 1);
                if (areNeighbours ? TurnsBack(a, b, c, d) : Meet(a, b, c, d))
                {
                    return Faults.WallsCross(Say(a, b), Say(c, d), starts[other]);
                }
            }
        }

        return null;
    }

    /// <summary>Two walls that share a corner lie on each other, or one of them has no length.</summary>
    private static bool TurnsBack((Rational X, Rational Y) a, (Rational X, Rational Y) b, (Rational X, Rational Y) c,
        (Rational X, Rational Y) d)
    {
        var (shared, from, to) = b == c ? (b, a, d) : (a, b, c);
        return a == b || c == d
            || (Turn(shared, from, to)
            .Sign == 0 && ((from.X - shared.X) * (to.X - shared.X)) + ((from.Y - shared.Y) * (to.Y - shared.Y)) > 0);
    }

    private static bool Meet((Rational X, Rational Y) a, (Rational X, Rational Y) b, (Rational X, Rational Y) c, (Rational X, Rational Y) d)
    {
        var (atC, atD, atA, atB) = (Turn(a, b, c).Sign, Turn(a, b, d).Sign, Turn(c, d, a).Sign, Turn(c, d, b).Sign);
        return (atC * atD < 0 && atA * atB < 0)
            || (atC == 0 && Within(a, b, c)) || (atD == 0 && Within(a, b, d)) || (atA == 0 && Within(c, d, a))
                || (atB == 0 && Within(c, d, b));
    }

    /// <summary>Over zero where the third lies to the left of the way from the first to the second.</summary>
    private static Rational Turn((Rational X, Rational Y) from, (Rational X, Rational Y) to, (Rational X, Rational Y) at) =>
        ((to.X - from.X) * (at.Y - from.Y)) - ((to.Y - from.Y) * (at.X - from.X));

    private static bool Within((Rational X, Rational Y) a, (Rational X, Rational Y) b, (Rational X, Rational Y) on) =>
        on.X >= Rational.Min(a.X, b.X) && on.X <= Rational.Max(a.X, b.X) && on.Y >= Rational.Min(a.Y, b.Y)
            && on.Y <= Rational.Max(a.Y, b.Y);

    private static string Say((Rational X, Rational Y) from, (Rational X, Rational Y) to) => $"{Say(from)} to {Say(to)}";

    private static string Say((Rational X, Rational Y) corner) => $"{Say(corner.X)},{Say(corner.Y)}";

    private static string Say(Rational inches) =>
        inches.Denominator.IsOne ? inches.ToString()
        : inches.Approximate.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture);
}
