using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Tests.Intake.Tape;

/// <summary>Requirement 6: what phones and word processors make of a fraction is read exactly.</summary>
[Trait("Requirement", "6")]
public sealed class PhoneFractions
{
    private const string Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private const string Lowered = "₀₁₂₃₄₅₆₇₈₉";
    private const string Wide = "０１２３４５６７８９";

    private static readonly Dictionary<(int, int), string> Glyphs = new()
    {
        [(1, 2)] = "½",
        [(1, 4)] = "¼",
        [(3, 4)] = "¾",
        [(1, 8)] = "⅛",
        [(3, 8)] = "⅜",
        [(5, 8)] = "⅝",
        [(7, 8)] = "⅞",
    };

    private static readonly string[] Between = ["-", "–", "—", "‑", "−", " ", "\u00A0", "\u2009", "\u202F", " - ", " – "];
    private static readonly string[] Ends = ["", "\"", "”", "″", "''", "’’", " in", "\u00A0in", "in.", " ”"];
    private static readonly string[] Feet = ["’ ", "′ ", "' ", "’", "'-", "’-", "\u00A0ft\u00A0", " ft "];

    [Fact]
    public void In_every_way_they_write_it()
    {
        var random = new Random(6);
        for (var i = 0; i < 6_000; i++)
        {
            var under = new[] { 2, 4, 8, 16, 32, 64 }[random.Next(6)];
            var (over, whole, feet) = (random.Next(1, under), random.Next(1, 12), random.Next(3));
            var (fraction, joined) = Fraction(over, under, random);
            var text = (feet > 0 ? feet + Any(Feet, random) : "") + whole
                + (joined && random.Next(2) == 0 ? "" : Any(Between, random)) + fraction + Any(Ends, random);

            var taken = Notation.ReadLength(text, Unit.Inch);

            taken.Fault?.Say.Should().BeNull(text);
            taken.Value!.Amount.Should().Be(Interval.At((feet * 12) + whole + new Rational(over, under)), text);
        }
    }

    /// <summary>The same in the place where they are typed.</summary>
    [Theory]
    [InlineData("6–1/2", 13, 2)]
    [InlineData("6 ½”", 13, 2)]
    [InlineData("3’ 6½", 85, 2)]
    [InlineData("6\u00A01/2", 13, 2)]
    [InlineData("6\u202F½\u00A0in", 13, 2)]
    public void In_a_job_file(string typed, int over, int under)
    {
        var part = TheBook.Job($"units: inches\ncurb:\n  width: {typed}\n").Parts.Single(one => one.Part.Kind.Name == "curb");
        part.Of("width").Single().Value.Should().BeOfType<ReadingValue.OfAmount>().Which.Amount.Should()
            .Be(Interval.At(new Rational(over, under)));
    }

    /// <returns>And whether it may stand behind a whole number without anything between.</returns>
    private static (string Text, bool Joined) Fraction(int over, int under, Random random) => random.Next(4) switch
    {
        0 when Glyphs.TryGetValue((over, under), out var glyph) => (glyph, true),
        1 => ($"{Digits(over, Raised)}⁄{Digits(under, Lowered)}", true),
        2 => ($"{Digits(over, Wide)}／{Digits(under, Wide)}", false),
        _ => ($"{over}{Any(["/", "⁄", "∕"], random)}{under}", false),
    };

    private static string Digits(int number, string forms) =>
        string.Concat(number.ToString(System.Globalization.CultureInfo.InvariantCulture)
        .Select(digit => forms[digit - '0']));

    private static string Any(string[] forms, Random random) => forms[random.Next(forms.Length)];
}
