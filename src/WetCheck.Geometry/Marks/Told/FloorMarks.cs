using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The screed sheet of a job's floor.</summary>
public static class FloorMarks
{
    /// <param name="known">All parts of the job, as <see cref="Derive.From"/> gives them. Plans count.</param>
    /// <param name="falls">Of the same job.</param>
    public static MarkReport Of(Job job, IReadOnlyList<PartState> known, PanReport falls)
    {
        var metric = job.Metric == true;
        var floor = MarkedFloor.Of(job, known, falls);
        var below = new LayersTold(job, known);
        var made = floor is { Plan: { } plan, Outline: { } outline }
            ? Of(plan, outline, floor, below, falls.Limits, TapeMarks.Of(metric)) : null;

        // It hangs on how the least fall is read, and nobody has said.
        var judged =
            made?.Held.Any(held => held is { Kept: false, Limits.Disputed: true }) == true
            ? MissingLine.Of("not-judged", MissingLine.Judged, metric) : null;
        PanMissing?[] missing = [.. falls.Missing, judged, .. below.Missing(forMarks: true)];
        return new MarkReport(made, floor.Why, floor.Window, [.. missing.OfType<PanMissing>()]);
    }

    private static MarkPlan Of(ScreedPlan plan, Outline outline, MarkedFloor floor, LayersTold below,
        IReadOnlyList<PanLimits> limits, TapeMarks tape)
    {
        var (surface, straight, names) = (plan.Surface, plan.Straight, new SideNames(outline));
        var held = limits.Select(one => (Limits: one, Fall: MarkedFloor.Limits(one)))
            .Select(one =>
            new MarkHeld(one.Limits, surface.Breaks(one.Fall).Count == 0, straight.IsTight(one.Fall, tape.Mark / 2)));
        return new MarkPlan(
            floor.Taken,
            floor.GivenRim,
            plan.Ribs.All(rib => Math.Abs(rib.Height - tape.Near(rib.Height)) < 1e-6),
            plan.Lowest,
            plan.Highest,
            [.. Clockwise(plan, names).Select(rib => Of(rib, names, tape))],
            surface.Steepest,
            surface.Flattest,
            plan.Dropped,
            [.. held],
            [.. below.Marks()]);
    }

    private static IEnumerable<Rib> Clockwise(ScreedPlan plan, SideNames names)
    {
        var walls = names.Clockwise.ToList();
        return plan.Closed
            ? plan.Ribs.Reverse().OrderBy(rib => rib.Kind == RibKind.Fold ? 0 : rib.Kind == RibKind.Foot ? 1 : 2)
                .ThenBy(rib => walls.IndexOf(rib.At))
            : plan.Ribs.Reverse();
    }

    private static MarkRib Of(Rib rib, SideNames names, TapeMarks tape) => new(
        rib.Kind switch { RibKind.Fold => "corner", RibKind.Foot => "wall", _ => "plane" },
        rib.Kind == RibKind.Fold ? names.OfCorner(rib.At) : names.Of(rib.At),
        new Spot(rib.Wall.X, rib.Wall.Y),
        new Spot(rib.End.X, rib.End.Y),
        tape.Near(rib.Length),
        rib.Height,
        rib.Marks);
}
