namespace WetCheck.Geometry;

/// <summary>What fills a floor between the level of the grate and its planes.</summary>
internal static class PanVolume
{
    /// <summary>Cubic inches, by exact prisms; nothing lies over the grate itself.</summary>
    /// <param name="rim">Height over the grate, inches.</param>
    public static double Of(Pan pan, double rim) => PanFacets.Of(pan, rim).Sum(facet => facet.Volume) + Cones(pan, rim);

    /// <summary>To a round strainer the floor is a cone at each corner: a third of its foot times its height.</summary>
    private static double Cones(Pan pan, double rim)
    {
        if (pan.Grate.Radius == 0)
        {
            return 0;
        }

        var (sum, count) = (0.0, pan.Outline.Corners.Count);
        for (var corner = 0; corner < count; corner++)
        {
            var (before, after) = (pan.Outline.WallAt(corner - 1).Inward * -1, pan.Outline.WallAt(corner).Inward * -1);
            var turn = Math.Atan2(before.Cross(after), before.Dot(after));
            if (turn > 0)
            {
                var (from, to) = (pan.Drain + (before * pan.Grate.Radius), pan.Drain + (after * pan.Grate.Radius));
                var kite = Outline.AreaOf([pan.Outline.Corners[corner], to, pan.Drain, from]);
                sum += (Math.Abs(kite) - (pan.Grate.Radius * pan.Grate.Radius * turn / 2)) * rim / 3;
            }
        }

        return sum;
    }
}
