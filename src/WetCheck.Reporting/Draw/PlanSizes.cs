using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>
/// Sizes of a plan: the drain and the whole below and at the left, corners of a floor that is no rectangle above and at
/// the right.
/// </summary>
internal static class PlanSizes
{
    public static void Draw(PlanBase plan, FloorPlan floor)
    {
        var (xs, ys) = (Places(floor.Outline.Select(at => at.X)), Places(floor.Outline.Select(at => at.Y)));
        var below = plan.Bottom + 24;
        Across(plan, floor.Drain is { } drain ? Places([xs[0], drain.X, xs[^1]]) : [], below, plan.Bottom + 18);
        Across(plan, [xs[0], xs[^1]], below + 7, plan.Bottom + 18);
        Upright(plan, floor.Drain is { } at ? Places([ys[0], at.Y, ys[^1]]) : [], -12, -7);
        Upright(plan, [ys[0], ys[^1]], -19, -7);
        Across(plan, xs.Count > 2 ? xs : [], -12, -7);
        Upright(plan, ys.Count > 2 ? ys : [], plan.Right + 14, plan.Right + 8);
    }

    private static List<double> Places(IEnumerable<double> all) => [.. all.Order().Aggregate(new List<double>(), (kept, one) =>
    {
        if (kept.Count == 0 || one - kept[^1] > 1e-6)
        {
            kept.Add(one);
        }

        return kept;
    })];

    private static void Across(PlanBase plan, List<double> xs, double at, double from)
    {
        if (xs.Count > 1)
        {
            Dimensions.Across(plan.Canvas, [.. xs.Select(x => plan.At(new Spot(x, 0)).X)], at, from,
                one => plan.Says.Size(xs[one + 1] - xs[one]));
        }
    }

    private static void Upright(PlanBase plan, List<double> ys, double at, double from)
    {
        if (ys.Count > 1)
        {
            Dimensions.Upright(plan.Canvas, [.. ys.Select(y => plan.At(new Spot(0, y)).Y)], at, from,
                one => plan.Says.Size(ys[one + 1] - ys[one]));
        }
    }
}
