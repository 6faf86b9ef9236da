using WetCheck.Model;
using static WetCheck.Reporting.JsonFigures;

namespace WetCheck.Reporting;

/// <summary>
/// The mortar of a floor in JSON. Inches, square and cubic inches, pounds. A pair is the least and the most that is
/// known.
/// </summary>
internal static class MudJson
{
    public static MudShape Shape(MudReport mud, PanSays says) => new()
    {
        Area = Known(mud.Area),
        Fall = Known(mud.Fall),
        Rim = Known(mud.Rim),
        Built = mud.Built is { } built ? MudSays.Key(built) : null,
        Ways = [.. mud.Ways.Select(Way)],
        Water = new()
        {
            Depth = Known(mud.Water?.Depth),
            Volume = Known(mud.Water?.Volume),
            Pounds = Known(mud.Water?.Pounds),
        },
        Missing = PanJson.Missing(mud.Missing, says),
    };

    private static MudWayShape Way(MudWay way) => new()
    {
        As = MudSays.Key(way.As),
        Layers = [.. way.Layers.Select(Layer)],
        Volume = Ends(way.Whole.Volume),
        Pounds = Ends(way.Whole.Pounds),
        Bags = Bags(way.Whole),
    };

    private static MudLayerShape Layer(MudLayer layer) => new()
    {
        Layer = layer.Key,
        HasFall = layer.HasFall,
        Thinnest = Ends(layer.Thinnest),
        Thickest = Ends(layer.Thickest),
        Volume = Ends(layer.Amount.Volume),
        Pounds = Ends(layer.Amount.Pounds),
        Bags = Bags(layer.Amount),
    };

    private static IReadOnlyList<BagShape> Bags(MudAmount amount) => [.. amount.Bags.Select(bag => new BagShape
    {
        Pounds = Round(bag.Bag.Pounds.Approximate),
        Yield = Round(bag.Bag.Yield.Approximate),
        Exact = Ends(bag.Exact),
        Whole = Ends(bag.Whole),
        WithWaste = Ends(bag.WithWaste),
    })];
}
