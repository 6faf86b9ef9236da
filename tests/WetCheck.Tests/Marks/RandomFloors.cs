using System.Globalization;
using WetCheck.Geometry;
using WetCheck.Model;
using WetCheck.Tests.Pan;

namespace WetCheck.Tests.Marks;

/// <summary>
/// Floors drawn at random with corners, drain and grate on the tape, most of which some level rim fits; the same in
/// every run.
/// </summary>
internal static class RandomFloors
{
    private const string Limits =
        "units: inches\nplumbing code: IRC 2021\naccess standard: none\nfloor: { judged: along any path, figure: inches }\n";

    private static readonly Lazy<PanReport> s_falls = new(() =>
    {
        var (limits, _) = LimitsInForce.Of(TheBook.Book, Derive.From(TheBook.Job(Limits), TheBook.Book.Vocabulary));
        limits.Select(one => one.AlongFolds).Should().Equal(false, true);
        return new PanReport([], [], null, [], limits, [], []);
    });

    private static readonly Lazy<IReadOnlyList<(string Job, MarkReport Marks, MudReport Mud, Outline Outline, PlanPoint Drain)>> s_all =
        new(() => [.. Enumerable.Range(0, 900).Select(at => Draw(new Random(1600 + at)))]);

    public static IReadOnlyList<(string Job, MarkReport Marks, MudReport Mud, Outline Outline, PlanPoint Drain)> All => s_all.Value;

    private static (string Job, MarkReport Marks, MudReport Mud, Outline Outline, PlanPoint Drain) Draw(Random random)
    {
        var sort = random.Next(8);
        var drawn = sort switch
        {
            0 => RandomRooms.Star(random).Outline.Corners,
            1 => RandomRooms.Convex(random).Outline.Corners,
            2 => Clipped(random, 36 + random.Next(25), 6 + random.Next(13)),
            3 => Less(random, 40 + random.Next(21), 2 + random.Next(7)),
            _ => Outline.Rectangle(30 + (random.Next(121) / 4.0), 30 + (random.Next(61) / 4.0)).Corners,
        };
        var (left, entry) = (drawn.Min(corner => corner.X), drawn.Min(corner => corner.Y));
        var outline = new Outline(drawn.Select(corner => new PlanPoint(Tape(corner.X - left), Tape(corner.Y - entry))));
        Grate grate = sort switch { 2 or 4 or 5 => Grate.Square(2.125), 6 => Grate.Round(2.125), _ => Grate.Point };
        if (Place(random, outline, grate, random.Next(4) == 0 ? 2.02 : 1.7) is not { } drain)
        {
            return Draw(random);
        }

        var job = Limits + string.Create(CultureInfo.InvariantCulture,
            $"shower:\n  outline: \"{string.Join(' ', outline.Corners.Select(At))}\"\n  drain at: {drain.X}, {drain.Y}\n")
            + (grate.Radius > 0 ? "drain: { grate: 4-1/4, grate shape: round }\n" : grate.Corners.Count > 1
                ? "drain: { grate: 4-1/4, grate shape: square }\n" : "");
        var read = TheBook.Job(job);
        var known = Derive.From(read, TheBook.Book.Vocabulary);
        return (job, FloorMarks.Of(read, known, s_falls.Value), FloorMud.Of(read, TheBook.Book, known, s_falls.Value), outline, drain);

        static string At(PlanPoint corner) => string.Create(CultureInfo.InvariantCulture, $"{corner.X},{corner.Y}");
    }

    /// <summary>A square with a corner cut off, at 45 degrees.</summary>
    private static IReadOnlyList<PlanPoint> Clipped(Random random, double side, double cut) =>
        Turned(random, [new(0, 0), new(side, 0), new(side, side - cut), new(side - cut, side), new(0, side)]);

    /// <summary>A square with a corner left out.</summary>
    private static IReadOnlyList<PlanPoint> Less(Random random, double side, double less) =>
        Turned(random,
            [new(0, 0), new(side, 0), new(side, side - less), new(side - less, side - less), new(side - less, side),
            new(0, side)]);

    private static IReadOnlyList<PlanPoint> Turned(Random random, IReadOnlyList<PlanPoint> corners) =>
        Enumerable.Range(0, random.Next(4)).Aggregate(corners, (ring, _) => [.. ring.Select(corner => corner.Turned)]);

    /// <summary>On the tape, and so that a level rim fits or all but fits; null where none was hit on.</summary>
    private static PlanPoint? Place(Random random, Outline outline, Grate grate, double ratio)
    {
        var (wide, deep) = (outline.Corners.Max(corner => corner.X), outline.Corners.Max(corner => corner.Y));
        for (var attempt = 0; attempt < 12; attempt++)
        {
            var at = new PlanPoint(Tape(wide * (0.35 + (0.3 * random.NextDouble()))), Tape(deep * (0.35 + (0.3 * random.NextDouble()))));
            if (outline.Walls.All(wall => wall.Distance(at) > 5))
            {
                var pan = new Geometry.Pan(outline, at, grate);
                if (pan.Longest(FallMeasure.Valley) < ratio * pan.Runs.Min())
                {
                    return at;
                }
            }
        }

        return null;
    }

    private static double Tape(double inches) => Math.Round(inches * 16) / 16;
}
