using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>What stays of a wet coat when it has dried: the wet film times its solids by volume (requirements WM-05).</summary>
internal static class DryFilm
{
    private static readonly Interval Possible = new(0, 100);
    private static readonly Spread Hundredth = Spread.Exactly(new Rational(1, 100));

    /// <returns>Inches. Null where neither can be told.</returns>
    public static Fact? Of(Part part, ReadingKind kind, JobFacts facts) =>
        facts.Of("membrane", "wet film") is not { } wet || facts.Of("membrane", "solids") is not { } solids ? null
        : Derived.From(part, kind, "wet coat by the gauge, times its solids by volume",
            known => Derived.Number(known[0]).Intersect(Interval.AtLeast(0))
                .Map(Derived.Number(known[1]).Intersect(Possible).Map(Hundredth, Interval.Product), Interval.Product),
                wet, solids);
}
