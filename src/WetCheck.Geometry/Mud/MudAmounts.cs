using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>From a volume of mortar to its weight and its bags.</summary>
internal static class MudAmounts
{
    /// <summary>Cubic inches that stand an inch deep on a square foot.</summary>
    public const int InchOnFoot = 144;

    public static MudAmount Of(Interval volume, Materials materials) => new(
        volume,
        materials.Mortar is { } mortar ? Times(volume, mortar.Number / InchOnFoot) : null,
        [.. materials.Bags.Select(bag => Count(bag, Times(volume, 1 / bag.Yield), materials.Waste))]);

    private static BagCount Count(MortarBag bag, Interval exact, MaterialFigure? waste) =>
        new(bag, exact, Up(exact), waste is { } more ? Up(Times(exact, 1 + (more.Number / 100))) : null);

    private static Interval Times(Interval all, Rational by) => new(all.Lo * by, all.Hi * by, all.LoOpen, all.HiOpen);

    private static Interval Up(Interval all) => new(Up(all.Lo), Up(all.Hi));

    /// <summary>A billionth of a bag is rounding of the machine.</summary>
    private static Rational? Up(Rational? number) =>
        number is { } known ? new Rational(-(-known + new Rational(1, 1_000_000)).Floor(), 1) : null;
}
