using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The arithmetic a setter does in his head: readings worked out from other readings, with bounds.</summary>
internal static class Derived
{
    /// <returns>Null where nothing is worked out for this reading.</returns>
    public static Fact? Of(Part part, ReadingKind kind, JobFacts facts) => part.Kind.Name switch
    {
        "shower" => ShowerSize.Of(part, kind, facts),
        "floor facet" when kind.Name == "fall" => FloorFall.OfFacet(part, kind, facts),
        "floor valley" when kind.Name == "fall" => FloorFall.OfValley(part, kind, facts),
        "floor" when kind.Name == "standing water" => StandingWater.Of(part, kind, facts),
        "tile" when kind.Name == "coverage" => TileCoverage.Of(part, kind, facts),
        "tile" when kind.Name == "fold lip" => FoldLip.Of(part, kind, facts),
        "membrane" when kind.Name == "dry film" => DryFilm.Of(part, kind, facts),
        _ => null,
    };

    /// <summary>Some reading of this kind of part is filled from other parts.</summary>
    public static bool Fills(string kind) => kind is "shower" or "floor" or "floor facet" or "floor valley" or "tile" or "membrane";

    /// <summary>A fact worked out once with plans unknown and once with plans counted.</summary>
    /// <param name="work">From what is known of each source, in their order, to the result.</param>
    public static Fact From(Part part, ReadingKind kind, string explained, Func<IReadOnlyList<Known>, Spread> work,
        params IReadOnlyList<Fact> from)
    {
        return new Fact(new FactId(part.Id, kind.Name), kind, Work(onPaper: false), Work(onPaper: true), IsPlanned: false, Clash: false,
            SaidHidden: false, ReadOnce: false, Sight.ToBeSeen, Counted: null, from, explained);

        Known Work(bool onPaper) => work([.. from.Select(fact => fact.Given(onPaper))]) is { IsUnknown: false } spread
            ? new Known.Number(spread)
            : Known.Nothing.Instance;
    }

    /// <summary>The spread of a number; everything where it is not known.</summary>
    public static Spread Number(Known known) => known is Known.Number number ? number.Spread : Spread.Everything;
}
