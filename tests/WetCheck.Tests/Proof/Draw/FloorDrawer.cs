using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>
/// Draws size, drain and falls of a floor together: where the rim is level, or each corner has its height, they follow from each
/// other; else neither has a height and each facet has its own fall.
/// </summary>
internal sealed class FloorDrawer(NumberDrawer numbers, bool metric, Dice dice)
{
    // Around the sides and areas that codes name, and their quotients.
    private static readonly Rational[] Sides = [24, 25, 25, 26, 28, 30, 30, 32, 34, 36, 42, 48, 52, 60];
    private static readonly Rational[] Areas = [900, 1024, 1300];

    public TrueValue.Sides Size(Rational halfCurb, Dice dice)
    {
        var width = Near(dice.Pick(Sides));
        var clear = Near(dice.Chance(0.5) ? new Rational((dice.Pick(Areas) / width * 64).Floor(), 64) : dice.Pick(Sides));
        var (toStuds, more) = (dice.Between(0, 2, 8), dice.Between(0, 10, 8));
        Rational? floor = dice.Chance(0.1) ? Rational.Min(width * clear, dice.Pick(Areas) + dice.Next(-2, 2)) : null;
        var overall =
            dice.Chance(0.2) ? Rational.Max(toStuds, Rational.Min(12, Near(30) - Rational.Min(width, clear - halfCurb)))
            : toStuds + more;
        return new TrueValue.Sides(width, Rational.Max(6, clear - halfCurb), toStuds, overall, floor);
    }

    public TrueValue.Spot Drain(TrueValue.Sides size) => dice.Chance(0.3)
        ? new TrueValue.Spot(size.Width / 2, size.Depth / 2)
        : new TrueValue.Spot(dice.Between(2, size.Width - 2, 8), dice.Between(2, size.Depth - 2, 8));

    /// <summary>How high the floor stands all round the walls; null: not level.</summary>
    public Rational? Rim(TrueValue.Sides size, TrueValue.Spot drain) => dice.Chance(0.35) ? null : Height(size, drain);

    /// <summary>How high it stands in each corner, where the rim is not level; null: in no plane between them.</summary>
    public IReadOnlyDictionary<string, Rational>? Corners(PartKind kind, TrueValue.Sides size, TrueValue.Spot drain) =>
        dice.Chance(0.5) ? kind.Places.ToDictionary(place => place.Name, _ => Height(size, drain), StringComparer.Ordinal) : null;

    private Rational Height(TrueValue.Sides size, TrueValue.Spot drain)
    {
        var run = dice.Pick([drain.FromLeft, drain.FromEntry, size.Width - drain.FromLeft, size.Depth - drain.FromEntry]);
        return numbers.AnyLimit("floor facet", "fall") is { } limit && dice.Chance(0.8)
            ? Rational.Max(new Rational(1, 64), (limit * run) + Offsets.Draw(Measure.Length, metric, null, orZero: true, dice))
            : dice.Between(new Rational(1, 4), 2, 64);
    }

    /// <summary>Of the wall at the foot of the drain, between its corners in proportion.</summary>
    public static Rational AtTheFoot(string side, IReadOnlyDictionary<string, Rational> corners, TrueValue.Sides size, TrueValue.Spot drain)
    {
        var (first, second, along) = side switch
        {
            "left" => ("left jamb", "left-back", drain.FromEntry / size.Depth),
            "right" => ("right jamb", "right-back", drain.FromEntry / size.Depth),
            "entry" => ("left jamb", "right jamb", drain.FromLeft / size.Width),
            _ => ("left-back", "right-back", drain.FromLeft / size.Width),
        };
        return corners[first] + ((corners[second] - corners[first]) * along);
    }

    public static TrueValue.Slope Facet(string side, Rational rim, TrueValue.Sides size, TrueValue.Spot drain) => new(rim, side switch
    {
        "left" => drain.FromLeft,
        "right" => size.Width - drain.FromLeft,
        "entry" => drain.FromEntry,
        _ => size.Depth - drain.FromEntry,
    });

    public static TrueValue.Slope Valley(string corner, Rational rim, TrueValue.Sides size, TrueValue.Spot drain)
    {
        var across = corner is "left jamb" or "left-back" ? drain.FromLeft : size.Width - drain.FromLeft;
        var along = corner is "left-back" or "right-back" ? size.Depth - drain.FromEntry : drain.FromEntry;
        var distance = Math.Sqrt(((across * across) + (along * along)).Approximate);
        return new TrueValue.Slope(rim, new Rational((long)Math.Round(distance * 64), 64), IsRounded: true);
    }

    public TrueValue.Slope Free(PartKind kind, ReadingKind reading)
    {
        var run = dice.Pick([(Rational)6, 12, 18, 24, 30, 36]);
        return new TrueValue.Slope(numbers.Amount(kind, reading) * run, run);
    }

    /// <summary>Of a lifted tile, so that the average of several comes near the limit.</summary>
    public Rational Coverage(bool good)
    {
        var limit = numbers.AnyLimit("tile", "coverage") ?? 90;
        return Rational.Min(100, limit + Offsets.Draw(Measure.Percent, metric, up: dice.Chance(0.9) ? good : !good, orZero: true, dice));
    }

    private Rational Near(Rational number) =>
        dice.Chance(0.3) ? number : number + Offsets.Draw(Measure.Length, metric, null, orZero: true, dice);
}
