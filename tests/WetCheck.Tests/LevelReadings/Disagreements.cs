using WetCheck.Geometry;

namespace WetCheck.Tests.LevelReadings;

/// <summary>Readings that can't all be right are asked about.</summary>
public sealed class Disagreements
{
    [Fact]
    public void A_misread_point_is_named_and_no_other()
    {
        var random = new Random(51);
        for (var trial = 0; trial < 30; trial++)
        {
            var points = Floors.Grid(6).WithDrain().Read(Floors.Falling(0.25), 1 / 16d, random.NextDouble()).ToList();
            var inside =
                Enumerable.Range(0, points.Count)
                .Where(at => Floors.Facets().Of(points).Count(facet => facet.Points.Contains(at)) == 1).ToList();
            var odd = inside[random.Next(inside.Count)];
            points[odd] = points[odd] with { Height = points[odd].Height + (random.Next(2) == 0 ? 1 : -1) };
            Floors.Facets().Of(points).SelectMany(facet => facet.Alone(points)).Should().Equal(odd);
        }
    }

    [Fact]
    public void Two_readings_at_one_place_may_differ_by_both_half_marks()
    {
        static LevelPoint At(double height) => new(new PlanPoint(12, 12), height, 1 / 32d);
        LevelDoubts.Of([At(0.5), At(0.5625)], Floors.Pan).Doubts.Should().BeEmpty();
        LevelDoubts.Of([At(0.5), At(0.625)], Floors.Pan).Doubts.Should().Equal(new LevelDoubt(LevelDoubtKind.Twice, 1, 0));
    }

    [Fact]
    public void A_point_outside_is_asked_about_and_one_on_the_wall_is_not()
    {
        var (kept, doubts) = LevelDoubts.Of([new(new PlanPoint(60, 36), 0, 0), new(new PlanPoint(63, 12), 0, 0)], Floors.Pan);
        kept.Should().ContainSingle();
        doubts.Should().Equal(new LevelDoubt(LevelDoubtKind.Outside, 1));
    }

    [Fact]
    public void A_floor_set_out_either_way_is_no_fault_where_the_way_is_not_known()
    {
        // To a grate 4-1/4 square the planes are steeper, and the folds end at its corners.
        var random = new Random(52);
        var grate = Grate.Square(2.125);
        var both = new FloorFacets(Floors.Pan, Floors.Drain, [Grate.Point, grate]);
        foreach (var made in new[] { Grate.Point, grate })
        {
            var facets = PanFacets.Of(new Geometry.Pan(Floors.Pan, Floors.Drain, made), 0.7).ToList();
            double Floor(PlanPoint at) => Math.Max(0, facets.Max(facet => facet.Slope.Dot(at - facet.Corners[^1]) + facet.Heights[^1]));
            for (var trial = 0; trial < 30; trial++)
            {
                var told = both.Of(Floors.Grid(3).Read(Floor, 1 / 16d, random.NextDouble()));
                foreach (var facet in told)
                {
                    var truth = 0.7 / new Geometry.Pan(Floors.Pan, Floors.Drain, made).Runs[facet.Wall];
                    var fall = facet.Along(Floors.Pan.Walls[facet.Wall].Inward * -1)!;
                    truth.Should().BeInRange(fall.Least - 1e-9, fall.Most + 1e-9);
                }

                for (var corner = 0; corner < 4; corner++)
                {
                    var fold = both.Fold(corner, told)!;
                    (0.7 / new Geometry.Pan(Floors.Pan, Floors.Drain, made).Folds[corner]).Should()
                        .BeInRange(fold.Least - 1e-9, fold.Most + 1e-9);
                }
            }
        }
    }
}
