using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>Level readings of a job as points.</summary>
internal static class LevelsTold
{
    /// <summary>What a tool without marks still can't tell.</summary>
    private const double Finest = 1e-9;

    public static IReadOnlyList<LevelPoint> Of(Known.Levels levels)
    {
        var half = Math.Max(Finest, levels.Half.Approximate);
        return [.. levels.Points.All.Select(point =>
            new LevelPoint(new PlanPoint(point.FromLeft.Approximate, point.FromEntry.Approximate),
            point.Up.Approximate, half))];
    }
}
