using WetCheck.Geometry;

namespace WetCheck.Tests.LevelReadings;

/// <summary>Floors of known shape, read on a grid.</summary>
internal static class Floors
{
    public static Outline Pan { get; } = Outline.Rectangle(60, 36);

    public static PlanPoint Drain { get; } = new(30, 18);

    /// <summary>From its corner to the middle of the pan.</summary>
    public static double Valley { get; } = Math.Sqrt((30 * 30) + (18 * 18));

    /// <summary>
    /// A level rim and a point drain in the middle of 60 x 36, falling so much per foot along the folds: rim times the
    /// farther of the two runs as shares.
    /// </summary>
    public static Func<PlanPoint, double> Falling(double valley) => at =>
        valley / 12 * Valley * Math.Max(Math.Abs(at.X - 30) / 30, Math.Abs(at.Y - 18) / 18);

    public static FloorFacets Facets() => new(Pan, Drain, [Grate.Point]);

    public static List<PlanPoint> Grid(double step, double width = 60, double depth = 36, double shiftX = 0, double shiftY = 0)
    {
        var places = new List<PlanPoint>();
        for (var x = shiftX; x <= width + 1e-9; x += step)
        {
            for (var y = shiftY; y <= depth + 1e-9; y += step)
            {
                places.Add(new PlanPoint(x, y));
            }
        }

        return places;
    }

    public static List<PlanPoint> WithDrain(this List<PlanPoint> places) => places.Contains(Drain) ? places : [.. places, Drain];

    /// <param name="mark">Of the tool; 0: exact, but for what a double can't hold.</param>
    public static IReadOnlyList<LevelPoint> Read(this IEnumerable<PlanPoint> places, Func<PlanPoint, double> floor,
        double mark, double datum = 0) =>
        [.. places.Select(at =>
            new LevelPoint(at,
            mark == 0 ? floor(at) + datum
            : Math.Round((floor(at) + datum) / mark, MidpointRounding.ToEven) * mark, Math.Max(mark / 2, 1e-9)))];
}
