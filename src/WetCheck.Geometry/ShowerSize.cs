using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>
/// Finished size of the shower. Finished faces are at most what was taken to the studs, and between overall less 12 in and overall.
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

        // A curb that is not there takes no half.
        var curb = facts.PartsOf("curb").FirstOrDefault();
        var hasCurb = curb is null ? Tri.No : facts.Presence.Of(curb.Part).Exists;
        var width = facts.Of("curb", "width");
        Spread ClearDepth(IReadOnlyList<Known> known) => Finished(known[0], second: true) + Half(hasCurb, known.Count > 1 ? known[1] : null);
        IReadOnlyList<Fact> sources = width is not null && hasCurb != Tri.No ? [size, width] : [size];
        return kind.Name switch
        {
            "width" => Derived.From(part, kind, "finished width", known => Finished(known[0], second: false), size),
            "depth" => Derived.From(part, kind, "finished depth", known => Finished(known[0], second: true), size),
            "clear depth" => Derived.From(part, kind, "finished depth and half the finished curb", ClearDepth, sources),
            "least side" or "circle" => Derived.From(part, kind, "the smaller of width and clear depth",
                known => Finished(known[0], second: false).Map(ClearDepth(known), Interval.Min), sources),
            "floor area" => Derived.From(part, kind, "width times clear depth", known => Area(known, ClearDepth(known)), sources),
            "overall long" => Derived.From(part, kind, "the longer overall side", known => Overall(known[0], Interval.Max), size),
            "overall short" => Derived.From(part, kind, "the shorter overall side", known => Overall(known[0], Interval.Min), size),
            _ => null,
        };
    }

    private static Spread Area(IReadOnlyList<Known> known, Spread clearDepth) => known[0] is Known.Pair { Floor: { } floor }
        ? floor
        : Finished(known[0], second: false).Map(clearDepth, Interval.Product);

    private static Spread Finished(Known size, bool second)
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
