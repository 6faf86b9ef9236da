using WetCheck.Model;

namespace WetCheck.Tests.Marks;

/// <summary>
/// The floor that comes of the printed marks keeps to the limits it was made for, 1/4 to 1/2 in per ft square to the
/// walls and along the folds
/// (IRC P2709.3 and LN-09), checked by another triangulation.
/// </summary>
public sealed class RebuiltFromItsMarks
{
    private const double Least = 1 / 48d;
    private const double Most = 1 / 24d;

    /// <summary>With room for a mark at the wall half a mark off; without it the sheet says so.</summary>
    [Fact]
    public void Three_hundred_floors_keep_to_the_limits()
    {
        var roomy = RandomFloors.All.Where(floor => floor.Marks.Plan is { } plan && !plan.Held.Any(held => held.Tight)).Take(300).ToList();
        roomy.Count.Should().Be(300);
        foreach (var (job, marks, _, outline, drain) in roomy)
        {
            var plan = marks.Plan!;
            var rebuilt = new Rebuilt(plan.Ribs, outline, drain);
            plan.Held.Should().OnlyContain(held => held.Kept, job);
            rebuilt.Triangles.Max(one => one.Slope).Should().BeLessThanOrEqualTo(Most, job);
            rebuilt.Triangles.Min(one => one.Square ?? 1).Should().BeGreaterThanOrEqualTo(Least, job);
            rebuilt.Falls.Min().Should().BeGreaterThanOrEqualTo(Least, job);
            rebuilt.Area.Should().BeApproximately(outline.Area, 0.02 * outline.Area, job);
            OnTheTape(plan);
        }
    }

    /// <summary>
    /// A floor with nothing to spare is one of which a wall's mark half a mark off breaks a limit; worked out here from
    /// the two runs alone.
    /// </summary>
    [Fact]
    public void Whether_there_is_room_is_told()
    {
        var (tight, roomy) = (0, 0);
        foreach (var (job, marks, _, outline, drain) in RandomFloors.All)
        {
            if (marks.Plan is not { } plan || !plan.IsLevel || plan.Taken != DrainTaken.Point)
            {
                continue;
            }

            var (near, far) = (outline.Walls.Min(wall => wall.Distance(drain)), outline.Corners.Max(corner => (corner - drain).Length));
            var (steepest, flattest) = ((plan.Highest + (1 / 32d)) / near, (plan.Highest - (1 / 32d)) / far);
            if (Math.Abs(steepest - Most) > 2e-4 && Math.Abs(flattest - Least) > 2e-4)
            {
                plan.Held.Any(held => held.Tight).Should().Be(steepest > Most || flattest < Least, job);
                _ = steepest > Most || flattest < Least ? tight++ : roomy++;
            }
        }

        tight.Should().BeGreaterThan(20);
        roomy.Should().BeGreaterThan(20);
    }

    /// <summary>Where the window of the rim holds no sixteenth, there is no level plan, and the sheet never prints one.</summary>
    [Fact]
    public void No_level_rim_is_printed_outside_its_window()
    {
        var (level, other) = (0, 0);
        foreach (var (job, marks, _, _, _) in RandomFloors.All)
        {
            if (marks.Window is not var (least, most))
            {
                continue;
            }

            var mark = Math.Ceiling((least * 16) - 1e-7) / 16;
            if (mark <= most + 1e-9)
            {
                level++;
                (marks.Plan!.IsLevel, marks.Plan.Highest).Should().Be((true, mark), job);
            }
            else
            {
                other++;
                (marks.Plan is null || !marks.Plan.IsLevel).Should().BeTrue(job);
                (marks.Plan is null).Should().Be(marks.Why == "no-mark", job);
            }
        }

        level.Should().BeGreaterThan(50);
        other.Should().BeGreaterThan(5);
    }

    private static void OnTheTape(MarkPlan plan)
    {
        foreach (var number in plan.Ribs.SelectMany(rib => rib.Marks.SelectMany(mark => new[] { mark.Far, mark.Height })
            .Append(rib.Height).Append(rib.Length)))
        {
            (number * 16).Should().BeApproximately(Math.Round(number * 16), 1e-9);
        }
    }
}
