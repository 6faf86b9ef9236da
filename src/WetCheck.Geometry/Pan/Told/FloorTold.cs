using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The floor as a job tells it: by its outline, else by a finished size. Anything else is only a bound of it.</summary>
internal static class FloorTold
{
    /// <summary>What two readings of one floor may differ by.</summary>
    private const double Mark = 1 / 16d;

    /// <returns>The outline, and what is missing or does not agree.</returns>
    public static (Outline? Outline, PanMissing? Missing) Of(Fact? outline, Fact? size, bool metric)
    {
        if (outline is { Clash: true })
        {
            return Missing("floor-clash", MissingLine.Outline);
        }

        if (outline?.OnPaper is Known.Corners { Points: var corners })
        {
            return Enclosed(corners) is not { } floor ? Missing("no-floor", MissingLine.Outline)
                : size?.OnPaper is Known.Pair { Between: Between.Finished } said && Differs(floor, said)
                    ? (floor, MissingLine.Of("floor-differs", MissingLine.Size, metric))
                : (floor, null);
        }

        return size switch
        {
            { Clash: true } => Missing("floor-clash", MissingLine.Size),
            { OnPaper: Known.Pair { Between: not Between.Finished } } => Missing("size-not-finished", MissingLine.Size),
            { OnPaper: Known.Pair { Floor: not null } } => Missing("floor-no-rectangle", MissingLine.Outline),
            { OnPaper: Known.Pair pair } => (Outline.Rectangle(Inches(pair.First), Inches(pair.Second)), null),
            _ => Missing("no-floor", MissingLine.Size),
        };

        (Outline?, PanMissing?) Missing(string key, string line) => (null, MissingLine.Of(key, line, metric));
    }

    /// <summary>Of one fact alone, a finished size or the corners; null where it tells no floor.</summary>
    public static Outline? Of(Known told) => told switch
    {
        Known.Pair { Between: Between.Finished, Floor: null } size => Outline.Rectangle(Inches(size.First), Inches(size.Second)),
        Known.Corners { Points: var corners } => Enclosed(corners),
        _ => null,
    };

    public static double Inches(Spread spread) => spread.AsRead.Lo!.Value.Approximate;

    private static bool Differs(Outline floor, Known.Pair size) =>
        Math.Abs(floor.Corners.Max(at => at.X) - floor.Corners.Min(at => at.X) - Inches(size.First)) > Mark
        || Math.Abs(floor.Corners.Max(at => at.Y) - floor.Corners.Min(at => at.Y) - Inches(size.Second)) > Mark;

    private static Outline? Enclosed(CornerPoints corners)
    {
        try
        {
            return new Outline(corners.All.Select(corner => new PlanPoint(corner.FromLeft.Approximate, corner.FromEntry.Approximate)));
        }
        catch (ArgumentException)
        {
            // Corners nearer to each other than any tape can tell.
            return null;
        }
    }
}
