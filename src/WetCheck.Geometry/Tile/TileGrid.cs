namespace WetCheck.Geometry;

/// <summary>Tiles of one size in straight courses. Inches.</summary>
/// <param name="Long">Of a tile, along the courses.</param>
/// <param name="Wide">Of a tile, across them.</param>
/// <param name="From">A corner of one tile.</param>
/// <param name="Turned">The courses against the entry wall, against the clock, in degrees.</param>
public sealed record TileGrid(double Long, double Wide, double Joint, PlanPoint From, double Turned)
{
    private const double Hair = 1e-6;

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

    /// <summary>
    /// The joint after a tile, along its course or across it: its side a hair within the tile, its middle, its side a
    /// hair within the next, each from one end to the other.
    /// </summary>
    public IReadOnlyList<(PlanPoint From, PlanPoint To)> JointAfter(int along, int across, bool course)
    {
        var (x, y) = (along * (Long + Joint), across * (Wide + Joint));
        return [.. new[] { -Hair, Joint / 2, Joint + Hair }.Select(off => course
            ? (Place(x + Long + off, y), Place(x + Long + off, y + Wide))
            : (Place(x, y + Wide + off), Place(x + Long, y + Wide + off)))];
    }

    /// <summary>The grid moved, in parts of a tile and its joint.</summary>
    public TileGrid Shifted(double along, double across) => this with { From = Place(along * (Long + Joint), across * (Wide + Joint)) };

    private PlanPoint Place(double along, double across) => From + (Along * along) + (Along.Turned * across);
}
