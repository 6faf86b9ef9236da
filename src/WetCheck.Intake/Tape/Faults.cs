using System.Numerics;
using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Every sentence about a quantity that can't be taken as it stands: what it is taken for, what to write.</summary>
internal static class Faults
{
    private const int LongestQuote = 24;

    public static Fault TooLong(int most, string like = "42-1/2") =>
        new("too-long", 0, $"More than {most} characters. Write one value, like {like}.");

    public static Fault TooManyDigits(Token at) =>
        new("too-many-digits", at.Start,
            $"A number of more than {Notation.MostDigits} digits. Write it as the tape shows it, like 42-1/2.");

    public static Fault NoNumber(TapeText tape, string wanted) => new("no-number", tape.Now.Start, tape.Now.Sign == Sign.End
        ? $"The number is not there. Write {wanted}."
        : $"\"{Quote(tape, tape.Now)}\" is not a number. Write {wanted}.");

    public static Fault LeftOver(TapeText tape) => tape.Now switch
    {
        { Sign: Sign.Comma } comma => new("comma", comma.Start, "A comma parts two values. Write one here, decimals with a point: 42.5."),
        { IsFigure: true } run when tape.Ahead(-1).Is("in") => SlopeOrDistance(tape, tape.Ahead(-tape.At), tape.Ahead(-1), run),
        var more => new("left-over", more.Start,
            $"\"{Quote(tape, more)}\" is more than the value asked here. Leave it out, or write it on a line of its own."),
    };

    public static Fault TwoNumbers(Token first, Token second) =>
        new("two-numbers", second.Start, $"{first.Text} and {second.Text} are two numbers. Write one, like 42-1/2 or 42.5.");

    public static Fault FeetOrInches(TapeText tape, Token feet, Token inches) =>
        new("feet-or-inches", feet.Start, inches.IsWhole && inches.Value < 12
            ? $"{feet.Text} feet {inches.Text}, or something else? Write {InFeet(feet, inches)}, or {InInches(tape, feet, inches)}."
            : $"{feet.Text}-{inches.Text} is no tape reading. Write it like 42-1/2, or 3'-6\".");

    /// <summary>The same of a size, <c>5-0 x 3-0</c>; null: it is not one.</summary>
    public static Fault? FeetOrInchesTwice(TapeText tape)
    {
        Sign[] shape = [Sign.Number, Sign.Dash, Sign.Number, Sign.Times, Sign.Number, Sign.Dash, Sign.Number];
        if (!shape.Select((sign, ahead) => tape.Ahead(ahead).Sign == sign).All(same => same))
        {
            return null;
        }

        var (a, b, c, d) = (tape.Now, tape.Ahead(2), tape.Ahead(4), tape.Ahead(6));
        return new[] { a, b, c, d }.Any(number => !number.IsWhole) || b.Value >= 12 || d.Value >= 12 ? null
            : new("feet-or-inches", a.Start,
                $"{a.Text} feet {b.Text}, or something else? Write {InFeet(a, b)} x {InFeet(c, d)}, or "
                + $"{InInches(tape, a, b)} x {InInches(tape, c, d)}.");
    }

    public static Fault NotOnTape(string written, Token at) =>
        new("not-a-tape-fraction", at.Start, $"{written} is not on a tape. Write halves, 4ths, 8ths, 16ths, 32nds or 64ths, like 3/8.");

    /// <summary>Alone, <c>17/16</c> is likely <c>1 7/16</c> without its space.</summary>
    public static Fault NotBelowOne(Token over, Token under, bool alone)
    {
        var (whole, rest) = BigInteger.DivRem(over.Value.Numerator, under.Value.Numerator);
        var counted = rest.IsZero ? $"{whole}" : $"{whole}-{rest}/{under.Text}";
        var write = !alone ? "the whole number and what is over, like 42-7/16"
            : over.Text.Length > 1 && over.Text[^1] != '0' ? $"{over.Text[..^1]}-{over.Text[^1]}/{under.Text}, or {counted}"
            : counted;
        return new("not-a-tape-fraction", over.Start, $"{over.Text}/{under.Text} is not below one. Write {write}.");
    }

    public static Fault FractionOfMillimetre(Token at) =>
        new("fraction-of-millimetre", at.Start,
            "A tape fraction, and the job is in millimetres. Write it with its unit, 42-1/2 in, or write the millimetres.");

    public static Fault LoneLength(TapeText tape, Token at) =>
        new("lone-number", at.Start, $"\"{Quote(tape, at)}\": inches or millimetres? Write 3 in or 3 mm, or fill the line \"units:\".");

    public static Fault WhichUnit(Token lone, Unit other) =>
        new("which-unit", lone.Start,
            $"{lone.Text} of which unit? The other is in {other.Key}. Write both with a unit: 5 ft x 3 ft, 60 in x 36 in.");

    public static Fault Leaning(Token at) =>
        new("strong-or-shy", at.Start, "Strong, shy, + and - go with one length by itself. Write the mark alone here.");

    public static Fault PastAFoot(Figure feet, Figure inches) =>
        new("inches-past-a-foot", inches.First.Start,
            $"After {feet.First.Text} feet come inches below 12. Write it like {feet.First.Text}'-6 1/4\".");

    public static Fault NotWhole(Token at) => new("whole-number", at.Start, "A number of things, or a year, is whole. Write it like 4.");

    public static Fault UnknownUnit(TapeText tape, Measure measure) => measure == Measure.Count
        ? new("unknown-unit", tape.Now.Start, $"\"{Quote(tape, tape.Now)}\": a bare number is asked here. Write it like 4.")
        : new("unknown-unit", tape.Now.Start, $"\"{Quote(tape, tape.Now)}\" is not a unit {Of(measure)}. Write {UnitsOf(measure)}.");

    public static Fault NoUnit(Measure measure, Token at) =>
        new("no-unit", at.Start, $"{at.Text} of which unit? Write {WantedOf(measure)}. Units: {UnitsOf(measure)}.");

    public static Fault TooSteep(Token at) => new("too-steep", at.Start, $"{at.Text} degrees is no floor. Write it like 1.2 deg.");

    public static Fault SlopeOrDistance(TapeText tape, Token rise, Token between, Token run) =>
        new("slope-or-distance", rise.Start,
            $"A slope, or a drop over a distance? Write {Slice(tape, rise.Start, between.Start)} over {Quote(tape, run)}, or 1 in 48.");

    public static Fault NoRun(TapeText tape, Token at) =>
        new("fall-without-run", at.Start, $"\"{Quote(tape, at)}\" over what distance? Write it like 1/2 over 36, 1/4 per ft, 2 % or 1:80.");

    public static Fault PerWhat(Token at) =>
        new("unknown-unit", at.Start, "A fall is so much per ft or per m. Write 1/4 per ft, or 20 mm per m.");

    public static Fault RunOfNothing(Token at) =>
        new("run-of-nothing", at.Start, "A fall goes over a distance above 0. Write it like 1/2 over 36.");

    public static Fault OneOfTwo(TapeText tape, string wanted) =>
        new("one-of-two", tape.Now.Start, $"Two lengths are asked here. Write {wanted}.");

    public static Fault SideTooLong(string typed, int at) =>
        new("side-too-long", at,
            $"{Cut(typed)} is more than {Limits.SideInches / 12} feet. Is a point or a dash lost? Write it like 60 x 36, or 42-1/2.");

    public static Fault SizeOfNothing(Token at) => new("size-of-nothing", at.Start, "A size is above 0 both ways. Write it like 60 x 36.");

    public static Fault NoCorner(string typed, int at) =>
        new("outline-corner", at,
            $"\"{Cut(typed)}\" is no corner. Write each as from left, from entry: {Outlines.Example}. Fractions with a dash: 42-1/2.");

    public static Fault NoFloor() =>
        new("outline-of-nothing", 0,
        $"These corners enclose no floor. Write them one after the other: {Outlines.Example}.");

    public static Fault WallsCross(string one, string other, int at) =>
        new("outline-crosses", at, $"The wall {one} meets the wall {other}. Write the corners in the order in which one walks round.");

    public static Fault TooManyCorners(int at) =>
        new("outline-corners", at,
            $"More than {Limits.Corners} corners. Leave out the small ones, or write the floor as a rectangle: 60 x 36.");

    public static Fault CutTooLarge(int at) =>
        new("outline-cut", at,
        "What is left out is not smaller than the floor. Write it like 60 x 60 less 24 x 24 at left-back.");

    public static Fault WhichCorner(string typed, int at) =>
        new("outline-where", at, $"\"{Cut(typed)}\": at which corner? Write left-back, \"right-back\", left jamb or right jamb after at.");

    public static Fault FinishedFaces(int at) =>
        new("outline-faces", at,
        "An outline goes along the finished faces. Write the finished size, or leave the line blank until it is known.");

    public static Fault NoLevel(string typed, int at) =>
        new("levels-point", at,
            $"\"{Cut(typed)}\" is no point with its height. Write each as from left, from entry, then how high: "
            + $"{LevelSets.Example}. Fractions with a dash: 42-1/2.");

    public static Fault LevelTooFar(string typed, int at) =>
        new("level-too-far", at,
            $"\"{Cut(typed)}\" is more than {Limits.LevelInches / 12} feet from the level line. Is a point or a dash "
            + $"lost? Write it like 29-1/2.");

    public static Fault NotOneNumber() => new("one-number", 0, "One exact number is asked here. Leave out over, under, strong and shy.");

    public static string WantedOf(Measure measure) => measure switch
    {
        Measure.Length => Lengths.Wanted,
        Measure.Slope => Falls.Wanted,
        Measure.Area => "an area, like 900 sq in or 6 sq ft",
        Measure.Volume => "a volume, like 2 cu ft or 40 l",
        Measure.Duration => "a time, like 15 min or 24 h",
        Measure.Temperature => "a temperature, like 65 F or 18 C",
        Measure.Percent => "a per cent, like 95",
        _ => "a number, like 4",
    };

    private static string UnitsOf(Measure measure)
    {
        var keys = Unit.All.Where(unit => unit.Measure == measure).Select(unit => unit.Key).ToList();
        return keys.Count == 1 ? keys[0] : $"{string.Join(", ", keys.SkipLast(1))} or {keys[^1]}";
    }

    private static string Of(Measure measure) => measure switch
    {
        Measure.Duration => "of time",
        Measure.Percent => "here",
        _ => $"of {measure.ToString().ToLowerInvariant()}",
    };

    private static string InFeet(Token feet, Token inches) => inches.Value == 0 ? $"{feet.Text}'" : $"{feet.Text}'-{inches.Text}\"";

    private static string InInches(TapeText tape, Token feet, Token inches) =>
        $"{(feet.Value * 12) + inches.Value}{(tape.Lone == Unit.Inch ? "" : " in")}";

    private static string Quote(TapeText tape, Token from) => Slice(tape, from.Start, tape.Typed.Length);

    private static string Slice(TapeText tape, int from, int to)
    {
        return Cut(tape.Typed[from..to]);
    }

    private static string Cut(string typed)
    {
        var shown = string.Concat(typed.Select(c => char.IsControl(c) || char.IsSurrogate(c) || Glyphs.IsUnseen(c) ? ' ' : c)).Trim();
        return shown.Length <= LongestQuote ? shown : shown[..LongestQuote].TrimEnd() + "...";
    }
}
