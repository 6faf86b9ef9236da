namespace WetCheck.Geometry;

/// <summary>The ribs of a floor, against the clock: along every fold and ridge, and from the foot of the drain on each wall.</summary>
internal static class RibRing
{
    /// <summary>Nearer to a corner the fold is enough.</summary>
    private const double Beside = 2;

    /// <summary>
    /// Whether its ribs can be drawn: they would cross where a corner that stands in looks at more than one corner of
    /// the grate.
    /// </summary>
    public static bool Fits(Pan pan) => pan.Grate switch
    {
        { Radius: > 0 } =>
            pan.Outline.IsConvex
            && pan.Outline.Walls.All(wall => wall.Foot(pan.Drain) > 0 && wall.Foot(pan.Drain) < wall.Length),
        _ => Enumerable.Range(0, pan.Outline.Corners.Count).Where(pan.Outline.IsInsideOut)
            .All(corner => Pan.FoldEnds(pan.Outline, corner, pan.Grate).Count() == 1),
    };

    public static IReadOnlyList<Rib> Level(Pan pan, double rim, TapeMarks tape) => [.. Of(pan, tape, _ => rim, null)];

    /// <param name="corners">Height of the rim at each corner.</param>
    /// <param name="feet">At the foot of the drain on each wall.</param>
    public static IReadOnlyList<Rib> Dipped(Pan pan, IReadOnlyList<double> corners, IReadOnlyList<double> feet, TapeMarks tape) =>
        [.. Of(pan, tape, corner => corners[corner], feet)];

    private static IEnumerable<Rib> Of(Pan pan, TapeMarks tape, Func<int, double> atCorner, IReadOnlyList<double>? feet)
    {
        for (var at = 0; at < pan.Outline.Walls.Count; at++)
        {
            var (wall, before, corner) = (pan.Outline.Walls[at], pan.Outline.WallAt(at - 1).Inward * -1, pan.Outline.Corners[at]);
            var outward = wall.Inward * -1;
            var ends = Pan.FoldEnds(pan.Outline, at, pan.Grate).Select(end => pan.Drain + end).ToList();
            var radius = pan.Grate.Radius;
            if (radius > 0)
            {
                yield return new Rib(RibKind.Edge, (at + pan.Outline.Walls.Count - 1) % pan.Outline.Walls.Count,
                    pan.Drain + (before * radius), corner, atCorner(at), null, []);
                yield return Along(RibKind.Fold, at, pan.Drain + ((corner - pan.Drain).Unit * radius), corner, atCorner(at), null);
                yield return new Rib(RibKind.Edge, at, pan.Drain + (outward * radius), corner, atCorner(at), outward, []);
            }
            else
            {
                foreach (var (end, nth) in ends.Select((end, nth) => (end, nth)))
                {
                    yield return Along(RibKind.Fold, at, end, corner, atCorner(at), nth == ends.Count - 1 ? outward : null);
                }
            }

            foreach (var end in Feet(pan, at, level: feet is null))
            {
                var foot = tape.Near(wall.Foot(end));
                if (foot >= Beside && foot <= wall.Length - Beside)
                {
                    yield return Along(RibKind.Foot, at, end, wall.From + (wall.Along * foot), feet?[at] ?? atCorner(at), outward);
                }
            }
        }

        Rib Along(RibKind kind, int at, PlanPoint end, PlanPoint on, double height, PlanPoint? up) =>
            new(kind, at, end, on, height, up, tape.Along((on - end).Length, height));
    }

    /// <summary>
    /// Where ribs square to a wall end: of a level rim at the middle of the grate's edge; where it dips, at both ends
    /// of the edge.
    /// </summary>
    private static IEnumerable<PlanPoint> Feet(Pan pan, int at, bool level)
    {
        var wall = pan.Outline.Walls[at];
        var reached =
            pan.Grate.Farthest(wall.Inward * -1)
            .Select(corner => pan.Drain + pan.Grate.Corners[corner] - (wall.Inward * pan.Grate.Radius)).ToList();
        return level && reached.Count == 2 ? [(reached[0] + reached[1]) * 0.5] : reached.OrderBy(wall.Foot);
    }
}
