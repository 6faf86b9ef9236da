using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>
/// A size beside an outline that is no rectangle tells less than it seems: width times depth is more floor than there is. It counts only
/// with the floor's own area in the same answer, so that neither can be lost without the other.
/// </summary>
internal static class OutlinedSize
{
    /// <summary>The readings of a part that count.</summary>
    public static IReadOnlyDictionary<string,
        IReadOnlyList<Reading>> Counted(IReadOnlyDictionary<string, IReadOnlyList<Reading>> readings) =>
        FloorOf(readings) is null ? readings
            : readings.ToDictionary(pair => pair.Key,
            pair => (IReadOnlyList<Reading>)[.. pair.Value.Where(reading => !IsTooMuch(reading))],
            StringComparer.Ordinal);

    /// <summary>Sizes that don't count, each with the area of the floor in square inches.</summary>
    public static IEnumerable<(Reading Size, Rational Floor)> Left(IReadOnlyDictionary<string, IReadOnlyList<Reading>> readings) =>
        FloorOf(readings) is { } floor ? readings.Values.SelectMany(all => all).Where(IsTooMuch).Select(size => (size, floor)) : [];

    private static bool IsTooMuch(Reading reading) => reading.Value is ReadingValue.OfSize { Floor: null };

    /// <summary>The area of the last outline; null where it is a rectangle, or there is none.</summary>
    private static Rational? FloorOf(IReadOnlyDictionary<string, IReadOnlyList<Reading>> readings)
    {
        if (readings.Values.SelectMany(all => all).Select(reading => reading.Value).OfType<ReadingValue.OfOutline>()
            .LastOrDefault() is not { } outline)
        {
            return null;
        }

        var corners = outline.Corners.All;
        var twice = corners.Zip(corners.Skip(1).Append(corners[0]),
            (a, b) => (a.FromLeft * b.FromEntry) - (b.FromLeft * a.FromEntry))
            .Aggregate((Rational)0, (sum, one) => sum + one);
        var area = twice.Abs * new Rational(1, 2);
        var around =
            (corners.Max(at => at.FromLeft) - corners.Min(at => at.FromLeft)) * (corners.Max(at =>
            at.FromEntry) - corners.Min(at => at.FromEntry));
        return area < around ? area : null;
    }
}
