namespace WetCheck.Geometry;

/// <summary>Tiles of one size in straight courses. Inches.</summary>
/// <param name="Long">Of a tile, along the courses.</param>
/// <param name="Wide">Of a tile, across them.</param>
/// <param name="From">A corner of one tile.</param>
/// <param name="Turned">The courses against the entry wall, against the clock, in degrees.</param>
public sealed record TileGrid(double Long, double Wide, double Joint, PlanPoint From, double Turned)
{
    public PlanPoint Along { get; } = new(Math.Cos(Turned * Math.PI / 180), Math.Sin(Turned * Math.PI / 180));

    /// <summary>Where a point lies, counted in tiles and their joints along and across the courses.</summary>
    public (double Along, double Across) Count(PlanPoint point) =>
        (Along.Dot(point - From) / (Long + Joint), Along.Turned.Dot(point - From) / (Wide + Joint));

    /// <summary>Of one tile, against the clock.</summary>
    public IReadOnlyList<PlanPoint> Corners(int along, int across)
    {
        var start = Place(along * (Long + Joint), across * (Wide + Joint));
        return [start, start + (Along * Long), start + (Along * Long) + (Along.Turned * Wide), start + (Along.Turned * Wide)];
    }

    /// <summary>The middle of the joint after a tile, along its course or across it.</summary>
    public IReadOnlyList<PlanPoint> JointAfter(int along, int across, bool course)
    {
        var (x, y) = (along * (Long + Joint), across * (Wide + Joint));
        return course
            ? [Place(x + Long + (Joint / 2), y), Place(x + Long + (Joint / 2), y + Wide)]
            : [Place(x, y + Wide + (Joint / 2)), Place(x + Long, y + Wide + (Joint / 2))];
    }

    /// <summary>The grid moved, in parts of a tile and its joint.</summary>
    public TileGrid Shifted(double along, double across) => this with { From = Place(along * (Long + Joint), across * (Wide + Joint)) };

    private PlanPoint Place(double along, double across) => From + (Along * along) + (Along.Turned * across);
}
