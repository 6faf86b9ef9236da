using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The walls of a floor told by its corners that stand square to the entry, exact, each by its side.</summary>
internal sealed class NamedWalls
{
    private static readonly Spread s_any = Spread.Within(Interval.AtLeast(0));
    private readonly IReadOnlyList<(Rational FromLeft, Rational FromEntry)> _corners;
    private readonly string[] _sides;

    public NamedWalls(CornerPoints corners)
    {
        var all = corners.All;
        _corners = Twice(all).Sign < 0 ? [.. all.Reverse()] : all;
        _sides = [.. _corners.Select((from, at) => Side(from, _corners[(at + 1) % _corners.Count]))];
    }

    /// <summary>
    /// From the drain to the one wall of a side, square to it; anything where there are several, or none, or it is out
    /// of sight.
    /// </summary>
    public Spread RunTo(string side, Known.Pair drain)
    {
        var walls = Enumerable.Range(0, _sides.Length).Where(at => _sides[at] == side).ToList();
        if (walls.Count != 1 || !SeesAll(drain))
        {
            return s_any;
        }

        var (fromLeft, fromEntry) = _corners[walls[0]];
        return (side switch
        {
            "left" => drain.First - Read(fromLeft, drain),
            "right" => Read(fromLeft, drain) - drain.First,
            "entry" => drain.Second - Read(fromEntry, drain),
            _ => Read(fromEntry, drain) - drain.Second,
        }).Intersect(Interval.AtLeast(0));
    }

    /// <summary>From the drain to the one corner between two sides.</summary>
    public Spread WayTo(string corner, Known.Pair drain)
    {
        var (before, after) = corner switch
        {
            "left jamb" => ("left", "entry"),
            "right jamb" => ("entry", "right"),
            "right-back" => ("right", "back"),
            _ => ("back", "left"),
        };
        var found = Enumerable.Range(0, _sides.Length)
            .Where(at => _sides[(at + _sides.Length - 1) % _sides.Length] == before && _sides[at] == after).ToList();
        if (found.Count != 1 || !SeesAll(drain))
        {
            return s_any;
        }

        var (fromLeft, fromEntry) = _corners[found[0]];
        var (x, y) = (Read(fromLeft, drain) - drain.First, Read(fromEntry, drain) - drain.Second);
        return Far(x).Map(Far(y), Root.OfSumOfSquares);
    }

    private bool SeesAll(Known.Pair drain) =>
        drain is { First.AsRead: { IsPoint: true, Lo: { } x }, Second.AsRead: { IsPoint: true, Lo: { } y } }
        && Enclosed() is { } floor
        && floor.IsSeenWholeFrom(new PlanPoint(x.Approximate, y.Approximate));

    private Outline? Enclosed()
    {
        try
        {
            return new Outline(_corners.Select(corner => new PlanPoint(corner.FromLeft.Approximate, corner.FromEntry.Approximate)));
        }
        catch (ArgumentException)
        {
            // Corners nearer to each other than any tape can tell.
            return null;
        }
    }

    /// <summary>The drain was read with the same tape.</summary>
    private static Spread Read(Rational at, Known.Pair drain) =>
        Spread.Read(at, drain.First.Band is { Lo: { } lo, Hi: { } hi } ? (hi - lo) * new Rational(1, 2) : 0);

    private static Spread Far(Spread along) => new(Far(along.AsRead), Far(along.Band));

    private static Interval Far(Interval along) => along is { Lo: { } lo, Hi: { } hi }
        ? new Interval(lo.Sign <= 0 && hi.Sign >= 0 ? 0 : Rational.Min(lo.Abs, hi.Abs), Rational.Max(lo.Abs, hi.Abs))
        : Interval.AtLeast(0);

    private static string Side((Rational FromLeft, Rational FromEntry) from, (Rational FromLeft, Rational FromEntry) to) =>
        ((to.FromLeft - from.FromLeft).Sign, (to.FromEntry - from.FromEntry).Sign) switch
        {
            ( > 0, 0) => "entry",
            (0, > 0) => "right",
            ( < 0, 0) => "back",
            (0, < 0) => "left",
            _ => "",
        };

    private static Rational Twice(IReadOnlyList<(Rational FromLeft, Rational FromEntry)> corners) => corners
        .Zip(corners.Skip(1).Append(corners[0]), (a, b) => (a.FromLeft * b.FromEntry) - (b.FromLeft * a.FromEntry))
            .Aggregate((Rational)0, (sum, one) => sum + one);
}
