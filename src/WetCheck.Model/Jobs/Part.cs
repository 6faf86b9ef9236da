namespace WetCheck.Model;

/// <summary>A thing of the job that can be pointed at. An identity: what is known of it is a <see cref="PartState"/>.</summary>
public sealed class Part
{
    public Part(PartKind kind, Part? above, Place? place = null, int? index = null, bool isOther = false)
    {
        Kind = kind;
        Above = above;
        Place = place;
        Index = index;
        IsOther = isOther;
        Id = Key(kind, place, index, isOther);
        PlaceOrder = place is null ? int.MaxValue : OrderOf(place, kind.Places);
    }

    public PartKind Kind { get; }

    public Part? Above { get; }

    public Place? Place { get; }

    /// <summary>Of a member of a list: its place in the file among those of its place, from 1; in an ordered list among all.</summary>
    public int? Index { get; }

    /// <summary>Where its place stands among those of its kind, from 0; a part without one comes last.</summary>
    public int PlaceOrder { get; }

    /// <summary>The members of a list that nobody has named; there may be none.</summary>
    public bool IsOther { get; }

    /// <summary>The same on every run: <c>nail/curb inside/2</c>.</summary>
    public string Id { get; }

    /// <summary>This part, or the nearest one above it, of a kind.</summary>
    public Part? Nearest(string kind)
    {
        for (var part = this; part is not null; part = part.Above)
        {
            if (part.Kind.Name == kind)
            {
                return part;
            }
        }

        return null;
    }

    public override string ToString() => Id;

    private static int OrderOf(Place place, IReadOnlyList<Place> places)
    {
        for (var at = 0; at < places.Count; at++)
        {
            if (places[at] == place)
            {
                return at;
            }
        }

        return -1;
    }

    private static string Key(PartKind kind, Place? place, int? index, bool isOther) =>
        string.Join('/',
            new[] { kind.Name, place?.Name,
            isOther ? "other" : index?.ToString(System.Globalization.CultureInfo.InvariantCulture) }.OfType<string>());
}
