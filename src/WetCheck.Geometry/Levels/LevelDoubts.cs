namespace WetCheck.Geometry;

/// <summary>Readings that disagree with each other or with the floor. They are asked about; none is left out without a word.</summary>
/// <param name="Why">What it disagrees with.</param>
/// <param name="Point">By its index.</param>
/// <param name="Other">The reading that it disagrees with; null: the floor, or all others.</param>
public sealed record LevelDoubt(LevelDoubtKind Why, int Point, int? Other = null);

public enum LevelDoubtKind
{
    /// <summary>Two at one place differ by more than both half marks.</summary>
    Twice,

    /// <summary>It stands outside the outline.</summary>
    Outside,

    /// <summary>Without it, or without another one so marked, its facet is flat.</summary>
    Alone,
}

public static class LevelDoubts
{
    /// <summary>Two nearer to each other than this are at one place.</summary>
    private const double SamePlace = 1 / 32d;

    /// <returns>The readings that count, one for each place inside the outline; and those to be asked about.</returns>
    public static (IReadOnlyList<LevelPoint> Kept, IReadOnlyList<LevelDoubt> Doubts) Of(IReadOnlyList<LevelPoint> points, Outline outline)
    {
        var doubts = new List<LevelDoubt>();
        var kept = new List<LevelPoint>();
        var seen = new Dictionary<(long, long), List<int>>();
        for (var at = 0; at < points.Count; at++)
        {
            var place = points[at].At;
            if (!outline.Contains(place) && outline.Walls.All(wall => !IsAt(wall, place)))
            {
                doubts.Add(new LevelDoubt(LevelDoubtKind.Outside, at));
                continue;
            }

            var (x, y) = ((long)Math.Floor(place.X / SamePlace), (long)Math.Floor(place.Y / SamePlace));
            var near = Near(x, y).SelectMany(cell => seen.GetValueOrDefault(cell, []))
                .Where(one => (points[one].At - place).Length < SamePlace).Select(one => (int?)one).FirstOrDefault();
            if (near is not { } same)
            {
                (seen.TryGetValue((x, y), out var cell) ? cell : seen[(x, y)] = []).Add(at);
                kept.Add(points[at]);
            }
            else if (Math.Abs(points[same].Height - points[at].Height) > points[same].Half + points[at].Half + 1e-9)
            {
                doubts.Add(new LevelDoubt(LevelDoubtKind.Twice, at, same));
            }
        }

        return (kept, doubts);
    }

    private static IEnumerable<(long, long)> Near(long x, long y) =>
        from dx in new[] { 0, -1, 1 } from dy in new[] { 0, -1, 1 } select (x + dx, y + dy);

    /// <summary>On the wall, as far as a tape tells.</summary>
    private static bool IsAt(Wall wall, PlanPoint place) =>
        Math.Abs(wall.Distance(place)) < SamePlace && wall.Foot(place) > -SamePlace && wall.Foot(place) < wall.Length
        + SamePlace;
}
