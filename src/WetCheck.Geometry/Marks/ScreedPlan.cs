namespace WetCheck.Geometry;

/// <summary>A floor as it is to be set out: rim on the tape, ribs with their marks.</summary>
/// <param name="Closed">The ribs go all round the drain; else they lie side by side on a channel.</param>
/// <param name="Volume">Between the floor and the level of the drain, by exact prisms, cubic inches.</param>
/// <param name="Dropped">Marks that were left out, since their rounding would have broken a limit.</param>
internal sealed record ScreedPlan(IReadOnlyList<Rib> Ribs, bool Closed, double Volume, int Dropped)
{
    public ScreedSurface Surface => new(Ribs, Closed);

    /// <summary>With the marks at the walls alone.</summary>
    public ScreedSurface Straight => new(Bare(Ribs), Closed);

    public double Highest => Ribs.Max(rib => rib.Height);

    public double Lowest => Ribs.Min(rib => rib.Height);

    public bool IsLevel => Highest - Lowest < 1e-9;

    /// <summary>The lowest level rim on a mark of the tape that keeps to all limits; null: no mark lies within them.</summary>
    public static ScreedPlan? Level(Pan pan, IReadOnlyList<FallLimits> limits, TapeMarks tape)
    {
        var windows = limits.Select(pan.RimWindow).ToList();
        var mark = tape.Up(windows.Max(window => window.Least));
        return mark <= windows.Min(window => window.Most) * (1 + 1e-9) ? Level(pan, mark, limits, tape) : null;
    }

    /// <summary>A level rim at a height that is given, whether or not it keeps to the limits.</summary>
    public static ScreedPlan Level(Pan pan, double rim, IReadOnlyList<FallLimits> limits, TapeMarks tape) =>
        Mended(RibRing.Level(pan, rim, tape), true, PanVolume.Of(pan, rim), limits);

    /// <summary>
    /// A rim that is lower along near walls; its corners and feet on marks of the tape. Null where none keeps to the
    /// limits.
    /// </summary>
    public static ScreedPlan? Dipped(Pan pan, IReadOnlyList<FallLimits> limits, TapeMarks tape)
    {
        var dips = limits.Select(one => RimDip.Of(pan, one)).ToList();
        if (dips.Contains(null))
        {
            return null;
        }

        double[] corners =
            [.. Enumerable.Range(0, pan.Outline.Corners.Count)
            .Select(corner => tape.Up(dips.Max(dip => dip!.Corners[corner])))];
        double[] feet = [.. corners.Select(_ => corners.Max())];
        for (var wall = 0; wall < feet.Length; wall++)
        {
            // The highest mark that will do is the nearest to level.
            while (Broken(wall))
            {
                feet[wall] -= tape.Mark;
                if (feet[wall] <= 0)
                {
                    return null;
                }
            }
        }

        var ring = RibRing.Dipped(pan, corners, feet, tape);
        var bare = new ScreedSurface(Bare(ring), true);
        return limits.All(one => bare.Breaks(one).Count == 0) ? Mended(ring, true, bare.Volume, limits) : null;

        bool Broken(int wall)
        {
            var ribs = Bare(RibRing.Dipped(pan, corners, feet, tape));
            var surface = new ScreedSurface(ribs, true);
            return limits.Any(one => surface.Breaks(one).Any(at => ribs[at].Kind == RibKind.Foot && ribs[at].At == wall));
        }
    }

    /// <summary>The lowest plane on a mark of the tape to a channel along a wall.</summary>
    public static ScreedPlan? OnePlane(Outline outline, int wall, double depth, double? rim,
        IReadOnlyList<FallLimits> limits, TapeMarks tape)
    {
        var mark = rim ?? tape.Up(limits.Max(one => one.Least) * depth);
        if (!outline.IsConvex || (rim is null && mark > limits.Min(one => one.Most) * depth * (1 + 1e-9)))
        {
            return null;
        }

        var edge = outline.Corners.Max(outline.Walls[wall].Distance) - depth;
        double Height(PlanPoint point) => (outline.Walls[wall].Distance(point) - edge) / depth * mark;
        var floor = Clip.Keep(outline.Corners, Height);
        return Mended(PlaneRibs.Of(outline, wall, depth, mark, tape), false,
            new Facet(wall, floor, [.. floor.Select(Height)]).Volume, limits);
    }

    /// <summary>
    /// Marks whose rounding breaks a limit are left out, since without them a rib is straight from the drain to its
    /// mark on the wall.
    /// </summary>
    private static ScreedPlan Mended(IReadOnlyList<Rib> ribs, bool closed, double volume, IReadOnlyList<FallLimits> limits)
    {
        var (all, bare) = (ribs.Sum(rib => rib.Marks.Count), new ScreedSurface(Bare(ribs), closed));
        var kept = limits.Where(one => bare.Breaks(one).Count == 0).ToList();
        while (true)
        {
            var surface = new ScreedSurface(ribs, closed);
            var broken = kept.SelectMany(surface.Breaks).Where(at => ribs[at].Marks.Count > 0).ToList();
            if (broken.Count == 0)
            {
                return new ScreedPlan(ribs, closed, volume, all - ribs.Sum(rib => rib.Marks.Count));
            }

            var worst = broken.MaxBy(at => ribs[at].Off);
            ribs = [.. ribs.Select((rib, at) => at == worst ? rib with { Marks = [] } : rib)];
        }
    }

    private static IReadOnlyList<Rib> Bare(IEnumerable<Rib> ribs) => [.. ribs.Select(rib => rib with { Marks = [] })];
}
