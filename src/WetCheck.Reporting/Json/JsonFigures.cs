using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Figures as decimals, to a millionth, so that 0.75 is written so on every machine.</summary>
internal static class JsonFigures
{
    public static decimal Round(double figure) => (decimal)Math.Round(figure, 6);

    /// <summary>Null where nothing is known, or no end.</summary>
    public static decimal? Known(double? figure) => figure is { } known && double.IsFinite(known) ? Round(known) : null;

    public static TwoFigures Place(Spot at) => new(Round(at.X), Round(at.Y));

    public static TwoFigures? Known(Spot? at) => at is null ? null : Place(at);

    public static TwoFigures? Known((double Least, double Most)? window) =>
        window is var (least, most) ? new(Round(least), Round(most)) : null;

    public static IReadOnlyList<TwoFigures> Ring(IReadOnlyList<Spot> ring) => [.. ring.Select(Place)];

    public static TwoEnds Ends(Interval? bounds) => new(Known(bounds?.Lo?.Approximate), Known(bounds?.Hi?.Approximate));
}
