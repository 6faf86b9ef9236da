namespace WetCheck.Geometry;

/// <summary>What the walls and corners of a floor are called: by the side that a wall stands on, seen from the entry.</summary>
internal sealed class SideNames
{
    public const string Ridge = "ridge";
    private const double Slant = 1e-6;
    private readonly string[] _sides;
    private readonly Outline _outline;

    /// <param name="hasRidge">The last wall is none: there the floor meets that of another drain.</param>
    public SideNames(Outline outline, bool hasRidge = false)
    {
        _outline = outline;
        _sides = [.. outline.Walls.Select(Side)];
        if (hasRidge)
        {
            _sides[^1] = Ridge;
        }

        foreach (var alike in Clockwise.GroupBy(wall => _sides[wall]).Where(group => group.Count() > 1).ToList())
        {
            foreach (var (wall, at) in alike.Select((wall, at) => (wall, at)))
            {
                _sides[wall] = $"{alike.Key}-{at + 1}";
            }
        }
    }

    /// <summary>Walls in the order in which one walks round, clockwise from the entry.</summary>
    public IEnumerable<int> Clockwise
    {
        get
        {
            var count = _outline.Walls.Count;
            var entry = Enumerable.Range(0, count).Where(wall => Side(_outline.Walls[wall]) == "entry")
                .DefaultIfEmpty(0).MinBy(wall => _outline.Walls[wall].From.Y);
            return Enumerable.Range(0, count).Select(step => (entry - step + count) % count);
        }
    }

    public string Of(int wall) => _sides[wall];

    /// <summary>Empty where two walls do not name it.</summary>
    public string OfCorner(int corner) => (_sides[(corner + _sides.Length - 1) % _sides.Length], _sides[corner]) switch
    {
        ("left", "entry") => "left jamb",
        ("entry", "right") => "right jamb",
        ("right", "back") => "right-back",
        ("back", "left") => "left-back",
        _ => "",
    };

    private static string Side(Wall wall) => (Sign(wall.Inward.X), Sign(wall.Inward.Y)) switch
    {
        (0, > 0) => "entry",
        (0, _) => "back",
        ( > 0, 0) => "left",
        (_, 0) => "right",
        ( > 0, > 0) => "left jamb",
        ( > 0, _) => "left-back",
        (_, > 0) => "right jamb",
        _ => "right-back",
    };

    private static int Sign(double part) => Math.Abs(part) < Slant ? 0 : Math.Sign(part);
}
