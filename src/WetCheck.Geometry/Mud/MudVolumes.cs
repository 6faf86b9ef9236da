using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>Mortar under one floor. The fall is counted once, in the layer that makes it; all other layers are of even thickness.</summary>
/// <param name="area">Without the grate, square inches.</param>
/// <param name="fall">Cubic inches between the finished floor and the level of the drain; null: not known.</param>
/// <param name="rim">The highest of the floor above the drain; null likewise.</param>
internal sealed class MudVolumes(double area, double? fall, double? rim, Materials materials)
{
    /// <param name="preSlope">Thickness of the slope under the liner at the drain.</param>
    /// <param name="bed">Of the bed, where it is thinnest.</param>
    /// <param name="underLiner">What the liner lies on; null: mortar.</param>
    public MudWay Of(BuiltAs built, Interval preSlope, Interval bed, string? underLiner)
    {
        var layers = Layers(built, preSlope, bed, underLiner);
        return new(built, layers, MudAmounts.Of(layers.Aggregate(Interval.At(0), (sum, layer) => sum + layer.Amount.Volume), materials));
    }

    private IReadOnlyList<MudLayer> Layers(BuiltAs built, Interval preSlope, Interval bed, string? underLiner) => built switch
    {
        BuiltAs.FormedTray => [],
        BuiltAs.BondedMembrane => [Layer("bed", bed, hasFall: true)],
        _ => underLiner switch
        {
            // A board brings its own fall; over a flat floor only the bed can make it.
            "sloped board" => [Layer("bed", bed, hasFall: false)],
            "flat floor" => [Layer("bed", bed, hasFall: true)],
            _ => [Layer("pre-slope", preSlope, hasFall: true), Layer("bed", bed, hasFall: false)],
        },
    };

    private MudLayer Layer(string key, Interval thinnest, bool hasFall)
    {
        var even = Interval.Product(thinnest, Interval.At(Exact(area)));
        return hasFall
            ? new(key, thinnest, thinnest + Or(rim), MudAmounts.Of(even + Or(fall), materials), true)
            : new(key, thinnest, thinnest, MudAmounts.Of(even, materials), false);
    }

    private static Interval Or(double? known) => known is { } number ? Interval.At(Exact(number)) : Interval.AtLeast(0);

    private static Rational Exact(double number) => (decimal)Math.Round(number, 9);
}
