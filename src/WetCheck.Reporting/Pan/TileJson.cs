using WetCheck.Model;
using static WetCheck.Reporting.JsonFigures;

namespace WetCheck.Reporting;

/// <summary>The tile of a floor on its folds, in JSON. Inches and degrees.</summary>
internal static class TileJson
{
    public static TileShape Shape(TileReport tile, PanSays says) => new()
    {
        Rim = Known(tile.Rim),
        Allowed = Known(tile.Allowed),
        LargestUncut = Known(tile.LargestUncut),
        Folds = [.. tile.Folds.Select(fold =>
            new TileFoldShape { From = Known(fold.At), Angle = Known(fold.Angle), Half = Known(fold.Half) })],
        Sizes = [.. tile.Sizes.Select(size => new TileSizeShape
        {
            Side = Known(size.Side),
            Worst = Known(size.Worst),
            Allowed = size.Allowed.ToString().ToLowerInvariant(),
        })],
        Laid = tile.Laid is { } laid ? Laid(laid) : null,
        Missing = PanJson.Missing(tile.Missing, says),
    };

    private static TileLaidShape Laid(TileLaid laid) => new()
    {
        Worst = Known(laid.Worst),
        At = Known(laid.At),
        Gap = Known(laid.Gap),
        Count = laid.Count,
        ToCut = Ring(laid.ToCut),
        Best = Known(laid.Best?.Step),
    };
}
