using WetCheck.Model;

namespace WetCheck.Pressed;

internal static partial class Carry
{
    private static Materials Materials(Wire wire, Materials? materials) => wire.Same(materials, static (wire, materials) => new Materials(
        wire.Maybe(materials?.Water, MaterialFigure),
        wire.Maybe(materials?.Mortar, MaterialFigure),
        wire.Maybe(materials?.TestDepth, MaterialFigure),
        wire.Maybe(materials?.Waste, MaterialFigure),
        wire.List(materials?.Bags, MortarBag),
        wire.List(materials?.Mixes, MortarMix))
    {
        LippageNarrow = wire.Maybe(materials?.LippageNarrow, MaterialFigure),
        LippageWide = wire.Maybe(materials?.LippageWide, MaterialFigure),
        JointFrom = wire.Maybe(materials?.JointFrom, MaterialFigure),
    });

    private static MaterialFigure MaterialFigure(Wire wire, MaterialFigure? figure) => wire.Same(figure, static (wire, figure) =>
        new MaterialFigure(Rational(wire, figure?.Number ?? 0), wire.Text(figure?.Row), At(wire, figure?.At)));

    private static MortarBag MortarBag(Wire wire, MortarBag? bag) => wire.Same(bag, static (wire, bag) =>
        new MortarBag(Rational(wire, bag?.Pounds ?? 0), Rational(wire, bag?.Yield ?? 0), wire.Text(bag?.Row), At(wire, bag?.At)));

    private static MortarMix MortarMix(Wire wire, MortarMix? mix) => wire.Same(mix, static (wire, mix) =>
        new MortarMix(Words(wire, mix?.Use), Words(wire, mix?.Sand), wire.Text(mix?.Row), At(wire, mix?.At)));
}
