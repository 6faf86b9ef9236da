namespace WetCheck.Geometry;

/// <summary>A step between two tiles at one end of the joint they share. Inches.</summary>
public sealed record TileStep(double Step, PlanPoint Place, LaidTile Of, LaidTile Beside);

/// <summary>
/// How rigid tiles fit a floor of planes: the steps between neighbours, each taken to the middle of the joint, and what
/// crosses a fold.
/// </summary>
public sealed class TileMisfit
{
    private static readonly bool[] s_ways = [true, false];

    /// <param name="floor">Convex planes, against the clock; what none covers (the grate) has no tile.</param>
    public TileMisfit(IReadOnlyList<Facet> floor, TileGrid grid)
    {
        var counts = floor.SelectMany(facet => facet.Corners).Select(grid.Count).ToList();
        var tiles = new Dictionary<(int, int), LaidTile>();
        for (var along = (int)Math.Floor(counts.Min(at => at.Along)); along <= counts.Max(at => at.Along); along++)
        {
            for (var across = (int)Math.Floor(counts.Min(at => at.Across)); across <= counts.Max(at => at.Across); across++)
            {
                if (LaidTile.On(floor, grid, along, across) is { } tile)
                {
                    tiles.Add((along, across), tile);
                }
            }
        }

        Tiles = [.. tiles.Values];
        Steps = [.. Tiles.SelectMany(tile => s_ways.SelectMany(course =>
            tiles.TryGetValue(course ? (tile.Along + 1, tile.Across) : (tile.Along, tile.Across + 1), out var beside)
                && (tile.Planes > 1 || beside.Planes > 1)
                ? Shared(floor, grid.JointAfter(tile.Along, tile.Across, course))
                    .Select(at => new TileStep(Math.Abs(tile.HeightAt(at) - beside.HeightAt(at)), at, tile, beside))
                : []))];
    }

    /// <summary>
    /// The ends of what two neighbours share of a joint: where walls or grate cut one of them short the other stands
    /// beside nothing.
    /// </summary>
    private static IEnumerable<PlanPoint> Shared(IReadOnlyList<Facet> floor, IReadOnlyList<(PlanPoint From, PlanPoint To)> joint)
    {
        var ((from, to), others) = (joint[1], Ranges(joint[2]));
        return Ranges(joint[0])
            .SelectMany(one =>
            others.Select(other => (Least: Math.Max(one.Least, other.Least), Most: Math.Min(one.Most, other.Most))))
            .Where(both => both.Least <= both.Most).SelectMany(both => new[] { both.Least, both.Most })
                .Select(share => from + ((to - from) * share));

        List<(double Least, double Most)> Ranges((PlanPoint From, PlanPoint To) side) =>
        [
            .. from facet in floor
               let kept = FacetClip.Keep([side.From, side.To], facet)
                   .Select(at => (at - side.From).Dot(side.To - side.From) / (side.To - side.From)
                   .Dot(side.To - side.From)).ToList()
               where kept.Count > 0
               select (kept.Min(), kept.Max()),
        ];
    }

    public IReadOnlyList<LaidTile> Tiles { get; }

    /// <summary>Only where one of the two crosses a fold: on one plane tiles have none.</summary>
    public IReadOnlyList<TileStep> Steps { get; }

    /// <summary>Null where no tile crosses a fold.</summary>
    public TileStep? Worst => Steps.MaxBy(step => step.Step);

    public double WorstStep => Worst?.Step ?? 0;

    /// <summary>Tiles over a fold that take part in a step past the allowance: cut along the fold each piece lies flat.</summary>
    public IEnumerable<LaidTile> ToCut(double allowance) => Steps.Where(step => step.Step > allowance)
        .SelectMany(step => new[] { step.Of, step.Beside }).Where(tile => tile.Planes > 1).Distinct();
}
