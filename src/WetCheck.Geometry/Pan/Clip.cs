namespace WetCheck.Geometry;

/// <summary>Cuts convex pieces of a plan.</summary>
internal static class Clip
{
    private const double Hair = 1e-12;

    /// <summary>What is left of a convex polygon where a straight function is not below zero; empty where nothing is.</summary>
    public static List<PlanPoint> Keep(IReadOnlyList<PlanPoint> polygon, Func<PlanPoint, double> of)
    {
        var kept = new List<PlanPoint>();
        for (var at = 0; at < polygon.Count; at++)
        {
            var (here, next) = (polygon[at], polygon[(at + 1) % polygon.Count]);
            var (level, after) = (of(here), of(next));
            if (level >= -Hair)
            {
                kept.Add(here);
            }

            if ((level > Hair && after < -Hair) || (level < -Hair && after > Hair))
            {
                kept.Add(here + ((next - here) * (level / (level - after))));
            }
        }

        return kept;
    }
}
