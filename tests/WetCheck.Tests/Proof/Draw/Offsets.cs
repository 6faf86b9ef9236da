using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>How far from a limit numbers are drawn: on it, within what a tool can tell, and well past it. In base units.</summary>
internal static class Offsets
{
    private static readonly Rational Millimetre = Unit.Millimetre.Factor;

    private static readonly Rational[] Inches = [new(1, 64), new(1, 32), new(1, 16), new(1, 8), new(1, 2), 2];
    private static readonly Rational[] Millimetres =
        [Millimetre / 4, Millimetre / 2, Millimetre, Millimetre * 3, Millimetre * 15, Millimetre * 60];

    /// <summary>Above zero, least first.</summary>
    public static IReadOnlyList<Rational> Of(Measure measure, bool metric) => measure switch
    {
        Measure.Length => metric ? Millimetres : Inches,
        Measure.Slope => [new(1, 768), new(1, 384), new(1, 96)],
        Measure.Area => [1, 10, 100],
        Measure.Duration => [new(1, 2), 1, 60, 600],
        Measure.Temperature => [new(1, 2), 1, 10],
        Measure.Percent => [new(1, 2), 1, 5, 20],
        _ => [1, 2, 10],
    };

    /// <param name="up">Above zero or below; null: any, zero too.</param>
    public static Rational Draw(Measure measure, bool metric, bool? up, bool orZero, Dice dice)
    {
        if (orZero && dice.Chance(0.25))
        {
            return 0;
        }

        var size = dice.Pick(Of(measure, metric));
        return up ?? dice.Chance(0.5) ? size : -size;
    }
}
