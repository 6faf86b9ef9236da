using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>Average coverage of at least three lifted tiles (ANSI A108.5, 3.3.2: requirements TL-03).</summary>
internal static class TileCoverage
{
    private const int Least = 3;
    private static readonly Interval Possible = new(0, 100);

    public static Fact Of(Part part, ReadingKind kind, JobFacts facts)
    {
        var members = facts.PartsOf("lifted tile").Where(tile => !tile.Part.IsOther).ToList();
        var lifted = members.Select(tile => facts.Read(tile, "coverage")!).ToList();
        var more = facts.PartsOf("lifted tile").FirstOrDefault(tile => tile.Part.IsOther);
        return lifted.Count >= Least && more is null
            ? Derived.From(part, kind, $"average of {lifted.Count} lifted tiles", Average, lifted)
            : Derived.From(part, kind, "average of at least three lifted tiles", _ => Spread.Everything, [.. lifted, Unseen(kind, facts)]);
    }

    private static Spread Average(IReadOnlyList<Known> known)
    {
        var share = Spread.Exactly(new Rational(1, known.Count));
        return known.Select(one => Derived.Number(one).Intersect(Possible).Map(share, Interval.Product))
            .Aggregate(Spread.Exactly(0), (sum, one) => sum + one);
    }

    /// <summary>Stands for the tiles that are still to be lifted, and asks what is asked of each.</summary>
    private static Fact Unseen(ReadingKind kind, JobFacts facts) =>
        new(new FactId("lifted tile/other", FactId.Whole),
            facts.PartsOf("lifted tile").FirstOrDefault()?.Part.Kind.Find("coverage")
            ?? kind, Known.Nothing.Instance, Known.Nothing.Instance, IsPlanned: false,
            Clash: false, SaidHidden: false, ReadOnce: false, facts.SightOf("lifted tile", "coverage"), Counted: null,
                From: [], Explained: "");
}
