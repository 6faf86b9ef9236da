using WetCheck.Geometry;

namespace WetCheck.Tests.Pan;

/// <summary>Floors drawn at random, the same in every run.</summary>
internal static class RandomRooms
{
    /// <summary>A room with no corner that stands into it, and a place well inside.</summary>
    public static (Outline Outline, PlanPoint Drain) Convex(Random random)
    {
        var angles = Enumerable.Range(0, random.Next(3, 9)).Select(_ => random.NextDouble() * Math.Tau).Order().ToList();
        var (wide, deep) = (random.Next(20, 60), random.Next(20, 60));
        var corners = angles.Select(angle => new PlanPoint(wide * Math.Cos(angle), deep * Math.Sin(angle))).ToList();
        return Drawn(corners, random) ?? Convex(random);
    }

    /// <summary>A room that is seen whole from somewhere; some corners stand into it.</summary>
    public static (Outline Outline, PlanPoint Drain) Star(Random random)
    {
        var count = random.Next(4, 11);
        var corners = Enumerable.Range(0, count)
            .Select(at => (Angle: (at + (0.8 * random.NextDouble())) * Math.Tau / count, Far: 18 + (30 * random.NextDouble())))
            .Select(corner => new PlanPoint(corner.Far * Math.Cos(corner.Angle), corner.Far * Math.Sin(corner.Angle))).ToList();
        return Drawn(corners, random) ?? Star(random);
    }

    private static (Outline, PlanPoint)? Drawn(List<PlanPoint> corners, Random random)
    {
        if (corners.Where((corner, at) => (corner - corners[(at + 1) % corners.Count]).Length < 3).Any() || Outline.AreaOf(corners) < 200)
        {
            return null;
        }

        var outline = new Outline(corners);
        for (var attempt = 0; attempt < 50; attempt++)
        {
            var drain = new PlanPoint((random.NextDouble() * 60) - 30, (random.NextDouble() * 60) - 30);
            if (outline.Walls.All(wall => wall.Distance(drain) > 4))
            {
                return (outline, drain);
            }
        }

        return null;
    }
}
