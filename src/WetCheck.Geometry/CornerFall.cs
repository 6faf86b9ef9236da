using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>
/// Falls of a floor whose corners stand at heights of their own, in a rectangle with a point drain. Two corners and the drain make a
/// plane; square to the wall it falls from the height that the wall has at the foot of the drain, between its two corners in
/// proportion. Along a fold it falls from the corner. Source of the formula: any general geometry text.
/// </summary>
internal static class CornerFall
{
    private const string Plane = "height of the floor at the wall, between its two corners, over the run square to it";
    private const string Fold = "height of the floor in the corner, over the distance from the drain";

    public static Fact? OfFacet(Part part, ReadingKind kind, JobFacts facts)
    {
        var side = part.Place!.Name;
        var (first, second) = Corners(side);
        return Sources(facts, first, second) is not { } sources ? null : Derived.From(part, kind, Plane, known =>
        {
            var runs = new FloorRuns(known[0], known[1]);
            return Between(Height(known[2]), Height(known[3]), runs.Along(side)).Map(runs.To(side), Interval.Quotient);
        }, sources);
    }

    public static Fact? OfValley(Part part, ReadingKind kind, JobFacts facts) => Sources(facts, part.Place!.Name) is not { } sources
        ? null
        : Derived.From(part, kind, Fold,
            known => Height(known[2])
            .Map(new FloorRuns(known[0], known[1]).ToCorner(part.Place!.Name), Interval.Quotient), sources);

    /// <summary>The corners of a side: nearer the entry or the left first.</summary>
    private static (string First, string Second) Corners(string side) => side switch
    {
        "left" => ("left jamb", "left-back"),
        "right" => ("right jamb", "right-back"),
        "entry" => ("left jamb", "right jamb"),
        _ => ("left-back", "right-back"),
    };

    private static IReadOnlyList<Fact>? Sources(JobFacts facts, params IReadOnlyList<string> corners)
    {
        var heights = corners
            .Select(corner => facts.PartsOf("floor corner").FirstOrDefault(part => part.Part.Place?.Name == corner))
            .Select(part => part is null ? null : facts.Read(part, "height"))
            .OfType<Fact>().ToList();
        return heights.Count == corners.Count && facts.Of("shower", "drain at") is { } drain && facts.Of("shower", "size") is { } size
            ? [drain, size, .. heights]
            : null;
    }

    private static Spread Height(Known known) => Derived.Number(known).Intersect(Interval.AtLeast(0));

    private static Spread Between(Spread first, Spread second, Spread along) => new(
        Between(first.AsRead, second.AsRead, along.AsRead), Between(first.Band, second.Band, along.Band));

    /// <summary>
    /// Least and most of a height between two; it changes evenly along the wall, so its ends are at the ends of
    /// <paramref name="along"/>.
    /// </summary>
    private static Interval Between(Interval first, Interval second, Interval along)
    {
        var (lo, hi) = (along.Lo ?? 0, along.Hi ?? 1);
        return new Interval(
            Both(first.Lo, second.Lo, Rational.Min, lo, hi),
            Both(first.Hi, second.Hi, Rational.Max, lo, hi));
    }

    private static Rational? Both(Rational? first, Rational? second, Func<Rational, Rational, Rational> pick, Rational lo, Rational hi)
    {
        return first is { } a && second is { } b ? pick(At(lo), At(hi)) : null;

        Rational At(Rational along) => a + ((b - a) * along);
    }
}
