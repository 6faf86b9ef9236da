using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>
/// Finished size of the shower. Finished faces are at most what was taken to the studs, and between overall less 12 in
/// and overall; where it is
/// told what board, mortar and tile add to the studs, a width loses it twice, a depth once and whatever the entry side takes.
/// The plan is measured from the middle of the threshold (IRC P2708.1 and UPC 408.7: requirements SG-03, SG-07), so half the
/// finished curb, 0 to 3 in while its width is unknown, counts to the clear depth.
/// </summary>
internal static class ShowerSize
{
    private static readonly Interval CurbShare = new(0, 12);
    private static readonly Interval HalfCurb = new(0, 3);
    private static readonly Spread Positive = Spread.Within(Interval.AtLeast(0));

    public static Fact? Of(Part part, ReadingKind kind, JobFacts facts)
    {
        if (!kind.Derived || facts.Of("shower", "size") is not { } size)
        {
            return null;
        }

        var alone = Of(part, kind, facts, size, null);
        return alone is not null && facts.Of("wall", "adds") is { IsBlank: false } adds
            ? alone with { Also = Of(part, kind, facts, size, adds) } : alone;
    }

    private static Fact? Of(Part part, ReadingKind kind, JobFacts facts, Fact size, Fact? adds)
    {
        // A curb that is not there takes no half.
        var curb = facts.PartsOf("curb").FirstOrDefault();
        var hasCurb = curb is null ? Tri.No : facts.Presence.Of(curb.Part).Exists;
        var width = hasCurb == Tri.No ? null : facts.Of("curb", "width");
        var less = adds is null ? "" : ", less what board, mortar and tile add to the studs";
        List<Fact> walls = [size, .. adds is null ? Array.Empty<Fact>() : [adds]];
        Spread Side(IReadOnlyList<Known> known, bool second) => Finished(known[0], adds is null ? null : known[1], second);
        Spread ClearDepth(IReadOnlyList<Known> known) =>
            Side(known, second: true) + Half(hasCurb, known.Count > walls.Count ? known[^1] : null);
        IReadOnlyList<Fact> sources = width is null ? walls : [.. walls, width];
        return kind.Name switch
        {
            "width" => Derived.From(part, kind, "finished width" + less, known => Side(known, second: false), walls),
            "depth" => Derived.From(part, kind, "finished depth" + less, known => Side(known, second: true), walls),
            "clear depth" => Derived.From(part, kind, "finished depth and half the finished curb" + less, ClearDepth, sources),
            "least side" or "circle" => Derived.From(part, kind, "the smaller of width and clear depth" + less,
                known => Side(known, second: false).Map(ClearDepth(known), Interval.Min), sources),
            "floor area" =>
                Derived.From(part, kind, "width times clear depth" + less,
                known => Area(known, Side(known, second: false), ClearDepth(known)), sources),
            "overall long" => Derived.From(part, kind, "the longer overall side", known => Overall(known[0], Interval.Max), size),
            "overall short" => Derived.From(part, kind, "the shorter overall side", known => Overall(known[0], Interval.Min), size),
            _ => null,
        };
    }

    private static Spread Area(IReadOnlyList<Known> known, Spread width, Spread clearDepth) =>
        known[0] is Known.Pair { Floor: { } floor } ? floor : width.Map(clearDepth, Interval.Product);

    private static Spread Finished(Known size, Known? adds, bool second)
    {
        if (size is not Known.Pair pair)
        {
            return Positive;
        }

        var side = second ? pair.Second : pair.First;
        var within = pair.Between switch
        {
            Between.Finished => side,
            Between.Overall => side - Spread.Within(CurbShare),
            Between.ToStuds when adds is Known.Number { Spread: var wall } =>
                side - wall - (second ? Spread.Within(Interval.AtLeast(0)) : wall),
            _ => side - Spread.Within(Interval.AtLeast(0)),
        };
        return within.Intersect(Interval.AtLeast(0));
    }

    private static Spread Half(Tri hasCurb, Known? width)
    {
        var half = width is Known.Number number
            ? new Spread(Halved(number.Spread.AsRead), Halved(number.Spread.Band)).Intersect(HalfCurb)
            : Spread.Within(HalfCurb);
        return hasCurb switch
        {
            Tri.No => Spread.Exactly(0),
            Tri.Yes => half,
            _ => Spread.Within(HalfCurb),
        };

        static Interval Halved(Interval whole) => Interval.Product(whole, Interval.At(new Rational(1, 2)));
    }

    private static Spread Overall(Known size, Func<Interval, Interval, Interval> of)
    {
        if (size is not Known.Pair pair)
        {
            return Positive;
        }

        return Side(pair.First).Map(Side(pair.Second), of);

        Spread Side(Spread side) => pair.Between switch
        {
            Between.Overall => side,
            Between.Finished => side + Spread.Within(CurbShare),
            _ => Positive,
        };
    }
}
