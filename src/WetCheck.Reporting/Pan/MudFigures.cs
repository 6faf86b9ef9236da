using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>
/// Volumes, weights and counts, or their bounds, in the units of the job: cubic feet and pounds, or litres and
/// kilograms.
/// </summary>
internal sealed record MudFigures(Phrases Phrases, bool Metric)
{
    /// <summary>Of the international pound; exact.</summary>
    private static readonly Rational s_kilograms = 0.45359237m;

    private static readonly Rational s_squareMetre = Unit.SquareMetre.Factor / Unit.SquareFoot.Factor;

    /// <summary>Of the United States; cubic inches.</summary>
    private const int Gallon = 231;

    public string Area(double squareInches) => Metric
        ? Decimals.Of(Unit.SquareMetre.FromBase(Exact(squareInches)), 2, Rounding.Nearest) + " m²"
        : Decimals.Of(Unit.SquareFoot.FromBase(Exact(squareInches)), 2, Rounding.Nearest) + " sq ft";

    public string Volume(double cubicInches) => Volume(Exact(cubicInches));

    public string Volumes(Interval all) => Bounds(all, Volume);

    public string Weight(Rational pounds) => Metric
        ? Decimals.Of(pounds * s_kilograms, 0, Rounding.Nearest) + " kg"
        : Decimals.Of(pounds, 0, Rounding.Nearest) + " lb";

    public string Weights(Interval all) => Bounds(all, Weight);

    /// <summary>A weight on an area.</summary>
    /// <param name="pounds">On a square foot.</param>
    /// <param name="places">Decimals.</param>
    public string Spread(Rational pounds, int places) => Metric
        ? Decimals.Of(pounds * s_kilograms * s_squareMetre, 1, Rounding.Nearest) + " kg/m²"
        : Decimals.Of(pounds, places, Rounding.Nearest) + " psf";

    public string Spreads(Interval all) => Bounds(all, pounds => Spread(pounds, 1));

    public string Lengths(Interval all) => Bounds(all, inches => Phrases.Show.Of(inches, Metric ? Unit.Millimetre : Unit.Inch));

    public string Counts(Interval all, int places = 0) => Bounds(all, count => Decimals.Of(count, places, Rounding.Nearest));

    public string Water(double cubicInches) => Metric
        ? Decimals.Of(Unit.Litre.FromBase(Exact(cubicInches)), 0, Rounding.Nearest) + " l"
        : Phrases.Say(Phrase.Mud.Gallons, ("number", Decimals.Of(Exact(cubicInches) / Gallon, 1, Rounding.Nearest)));

    /// <summary>"80 lb (0.6 cu ft)".</summary>
    public string Bag(MortarBag bag) => $"{Weight(bag.Pounds)} ({Volume(bag.Yield)})";

    public static Rational Exact(double number) => (decimal)Math.Round(number, 9);

    private string Volume(Rational cubicInches) => Metric
        ? Decimals.Of(Unit.Litre.FromBase(cubicInches), 1, Rounding.Nearest) + " l"
        : Decimals.Of(Unit.CubicFoot.FromBase(cubicInches), 2, Rounding.Nearest) + " cu ft";

    /// <summary>A bound is shown as one, never as a number.</summary>
    private string Bounds(Interval all, Func<Rational, string> say) => all switch
    {
        { IsPoint: true, Lo: { } at } => say(at),
        { Lo: { Sign: > 0 } low, Hi: { } high } => Phrases.Say(Phrase.Bound.Between, ("from", say(low)), ("to", say(high))),
        { Lo: { Sign: > 0 } low } => Phrases.Say(Phrase.Bound.Least, ("amount", say(low))),
        { Hi: { } high } => Phrases.Say(Phrase.Bound.Most, ("amount", say(high))),
        _ => Phrases[Phrase.Value.Nothing],
    };
}
