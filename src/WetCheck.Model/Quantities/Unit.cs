namespace WetCheck.Model;

/// <summary>A unit as people write it. Conversions are exact.</summary>
/// <param name="Key">The word for it in files: <c>in</c>, <c>mm</c>, <c>per ft</c>.</param>
/// <param name="Factor">Base units in one of it.</param>
/// <param name="Shift">Base units at its zero; only Celsius has one.</param>
public sealed record Unit(string Key, Measure Measure, Rational Factor, Rational Shift = default)
{
    private static readonly Rational InchesInMillimetre = new(5, 127);

    public static readonly Unit Each = new("", Measure.Count, 1);
    public static readonly Unit Inch = new("in", Measure.Length, 1);
    public static readonly Unit Foot = new("ft", Measure.Length, 12);
    public static readonly Unit Mil = new("mil", Measure.Length, new Rational(1, 1000));
    public static readonly Unit Millimetre = new("mm", Measure.Length, InchesInMillimetre);
    public static readonly Unit Centimetre = new("cm", Measure.Length, InchesInMillimetre * 10);
    public static readonly Unit Metre = new("m", Measure.Length, InchesInMillimetre * 1000);
    public static readonly Unit InchPerFoot = new("per ft", Measure.Slope, new Rational(1, 12));
    public static readonly Unit PercentFall = new("% fall", Measure.Slope, new Rational(1, 100));
    public static readonly Unit RiseOverRun = new("1 in", Measure.Slope, 1);
    public static readonly Unit SquareInch = new("sq in", Measure.Area, 1);
    public static readonly Unit SquareFoot = new("sq ft", Measure.Area, 144);
    public static readonly Unit SquareMetre = new("sq m", Measure.Area, InchesInMillimetre * InchesInMillimetre * 1_000_000);
    public static readonly Unit CubicInch = new("cu in", Measure.Volume, 1);
    public static readonly Unit CubicFoot = new("cu ft", Measure.Volume, 1728);
    public static readonly Unit Litre = new("l", Measure.Volume, InchesInMillimetre * InchesInMillimetre * InchesInMillimetre * 1_000_000);
    public static readonly Unit Minute = new("min", Measure.Duration, 1);
    public static readonly Unit Hour = new("h", Measure.Duration, 60);
    public static readonly Unit Day = new("d", Measure.Duration, 1440);
    public static readonly Unit Fahrenheit = new("F", Measure.Temperature, 1);
    public static readonly Unit Celsius = new("C", Measure.Temperature, new Rational(9, 5), 32);
    public static readonly Unit Percent = new("%", Measure.Percent, 1);

    public static readonly IReadOnlyList<Unit> All =
    [
        Each, Inch, Foot, Mil, Millimetre, Centimetre, Metre, InchPerFoot, PercentFall, RiseOverRun, SquareInch, SquareFoot,
        SquareMetre, CubicInch, CubicFoot, Litre, Minute, Hour, Day, Fahrenheit, Celsius, Percent,
    ];

    /// <summary>True of the units that a metric tape carries.</summary>
    public bool IsMetric =>
        this == Millimetre || this == Centimetre || this == Metre || this == SquareMetre || this == Litre
        || this == Celsius;

    public Rational ToBase(Rational number) => (number * Factor) + Shift;

    public Rational FromBase(Rational value) => (value - Shift) / Factor;

    /// <summary>Units are told apart by key; the record's own equality would compare fractions.</summary>
    public bool Equals(Unit? other) => Key == other?.Key;

    public override int GetHashCode() => Key.GetHashCode(StringComparison.Ordinal);
}
