namespace WetCheck.Geometry;

/// <summary>
/// The sheet that lines a floor and goes up its walls, laid flat. Lengths on the slope are taken as in plan: 30 in at
/// 1/4 in per ft are 0.007 longer,
/// at most falls a little more, less than any cut holds.
/// </summary>
/// <param name="Outline">Of the rough floor, inches.</param>
/// <param name="Beyond">What goes past each wall: the turn-up; at a curb up, over and down its far side.</param>
public sealed record LinerSheet(Outline Outline, IReadOnlyList<double> Beyond)
{
    /// <summary>Over a curb: up inside, across the top, and what hangs outside.</summary>
    public static double OverCurb(double height, double width, double outside) => height + width + outside;

    /// <summary>The strip past each wall, a flap to be folded up on the wall's line; against the clock.</summary>
    public IEnumerable<IReadOnlyList<PlanPoint>> Flaps => Outline.Walls.Select((wall, at) =>
        (IReadOnlyList<PlanPoint>)[wall.From, wall.From - (wall.Inward * Beyond[at]), wall.To - (wall.Inward * Beyond[at]), wall.To]);

    public IEnumerable<LinerCorner> Corners => Outline.Corners.Select((_, at) =>
    {
        var (before, after) = (Outline.WallAt(at - 1).Along, Outline.WallAt(at).Along);
        var turn = Math.Atan2(before.Cross(after), before.Dot(after)) * 180 / Math.PI;
        return new LinerCorner(180 - turn, Math.Min(Beyond[(at + Beyond.Count - 1) % Beyond.Count], Beyond[at]));
    });

    /// <summary>The least rectangle along the axes of the plan that holds floor and flaps.</summary>
    public (double Long, double Wide) Size
    {
        get
        {
            var all = Flaps.SelectMany(flap => flap).ToList();
            return (all.Max(at => at.X) - all.Min(at => at.X), all.Max(at => at.Y) - all.Min(at => at.Y));
        }
    }
}
