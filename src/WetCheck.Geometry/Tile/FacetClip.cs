namespace WetCheck.Geometry;

/// <summary>What of a tile or a joint lies on one plane of a floor.</summary>
internal static class FacetClip
{
    /// <param name="convex">A convex polygon, or the two ends of a line.</param>
    public static List<PlanPoint> Keep(IReadOnlyList<PlanPoint> convex, Facet facet)
    {
        var kept = convex.ToList();
        for (var at = 0; at < facet.Corners.Count && kept.Count > 0; at++)
        {
            var (from, to) = (facet.Corners[at], facet.Corners[(at + 1) % facet.Corners.Count]);
            if ((to - from).Length > 1e-12)
            {
                kept = Clip.Keep(kept, point => (to - from).Unit.Cross(point - from));
            }
        }

        return kept;
    }

    public static double HeightAt(Facet facet, PlanPoint point) => facet.Heights[0] + facet.Slope.Dot(point - facet.Corners[0]);
}
