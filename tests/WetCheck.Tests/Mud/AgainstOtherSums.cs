using NetTopologySuite.Geometries;
using WetCheck.Model;
using WetCheck.Tests.Marks;
using static WetCheck.Tests.Pan.FloorOfAJob;

namespace WetCheck.Tests.Mud;

/// <summary>Volumes against a general geometry library's areas and against sums over fine rasters.</summary>
public sealed class AgainstOtherSums
{
    [Fact]
    public void Random_floors_are_their_rebuilt_triangles()
    {
        foreach (var (job, marks, mud, outline, drain) in RandomFloors.All.Where(floor => floor.Marks.Plan is not null).Take(200))
        {
            var plan = marks.Plan!;
            var ring = outline.Corners.Append(outline.Corners[0]).Select(corner => new Coordinate(corner.X, corner.Y)).ToArray();
            var grate = plan.Taken == DrainTaken.Point ? 0 : job.Contains("round", StringComparison.Ordinal)
                ? Math.PI * 2.125 * 2.125 : 4.25 * 4.25;
            mud.Area!.Value.Should().BeApproximately(new Polygon(new LinearRing(ring)).Area - grate, 1e-6, job);
            mud.Fall!.Value.Should()
                .BeApproximately(new Rebuilt([.. plan.Ribs.Select(rib => rib with { Marks = [] })], outline, drain)
                .Volume, 0.015 * mud.Fall.Value, job);
        }
    }

    /// <summary>To a square grate along the walls the floor is the highest of its walls' planes, and at zero between.</summary>
    [Fact]
    public void A_rectangle_to_a_square_grate_is_the_sum_of_small_columns()
    {
        var mud = Told("method: bonded membrane with curb\n" + Inches + Grate + "bed: { thickness: 1-1/4 }\n"
            + Rectangle(48, 36, 25, 18.5)).Json["mud"]!;
        var (rim, sum) = (Number(mud["rim"]), 0.0);
        const double Step = 0.125;
        for (var x = Step / 2; x < 48; x += Step)
        {
            for (var y = Step / 2; y < 36; y += Step)
            {
                var (dx, dy) = (Math.Abs(x - 25) - 2.125, Math.Abs(y - 18.5) - 2.125);
                if (dx > 0 || dy > 0)
                {
                    var along = dx / ((x < 25 ? 25 : 23) - 2.125);
                    var across = dy / ((y < 18.5 ? 18.5 : 17.5) - 2.125);
                    sum += (1.25 + (rim * Math.Max(along, across))) * Step * Step;
                }
            }
        }

        Number(mud["ways"]![0]!["volume"]![0]).Should().BeApproximately(sum, 1e-3 * sum);
    }
}
