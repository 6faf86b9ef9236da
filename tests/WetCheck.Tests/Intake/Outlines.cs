using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Tests.Intake;

/// <summary>A floor by its corners.</summary>
public sealed class Outlines
{
    private const string Ell = "0,0 60,0 60,36 36,36 36,60 0,60";

    [Theory]
    [InlineData(Ell, Ell)]
    [InlineData("0, 0 60, 0 60, 36 36, 36 36, 60 0, 60", Ell)]
    [InlineData("0,0; 60,0; 60,36; 36,36; 36,60; 0,60", Ell)]
    [InlineData("0,0 60,0 60,36 36,36 36,60 0,60 0,0", Ell)]
    [InlineData("60 x 60 less 24 x 24 at right-back", Ell)]
    [InlineData("60 X 60 LESS 24 by 24 AT Right Back", Ell)]
    [InlineData("5' x 5' less 2' x 24 in at CD", Ell)]
    [InlineData("60 x 36", "0,0 60,0 60,36 0,36")]
    [InlineData("60 x 36 finished", "0,0 60,0 60,36 0,36")]
    [InlineData("38 x 38 clipped 18 x 18 at right-back", "0,0 38,0 38,20 20,38 0,38")]
    [InlineData("38 x 38 clipped 18 x 18 at left jamb", "38,38 0,38 0,18 18,0 38,0")]
    [InlineData("0,0 42-1/2,0 42 1/2 in, 36; 0,36", null)]
    [InlineData("0,0; 42 1/2,0; 42 1/2,36; 0,36", "0,0 85/2,0 85/2,36 0,36")]
    [InlineData("0,0 1524 mm,0 60,36 0,36", "0,0 60,0 60,36 0,36")]
    public void A_floor(string typed, string? read)
    {
        var outline = Notation.ReadOutline(typed, Unit.Inch);
        (outline.IsRead ? JobPage.Value(outline.Value) : null).Should().Be(read);
    }

    [Theory]
    [InlineData("0,0 60,0 60 36, 0,36", "outline-corner", 9)]
    [InlineData("0,0 60,0 60,thirty", "no-number", 12)]
    [InlineData("0,0 60,0 0,36 60,36", "outline-crosses", 14)]
    [InlineData("0,0 60,0 60,36 60,10 0,36", "outline-crosses", 9)]
    [InlineData("0,0 0,0 60,36 60,10", "outline-crosses", 4)]
    [InlineData("0,0 60,0", "outline-of-nothing", 0)]
    [InlineData("0,0 60,0 30,0", "outline-of-nothing", 0)]
    [InlineData("60 x 60 less 60 x 24 at right-back", "outline-cut", 13)]
    [InlineData("60 x 60 less 24 x 24", "outline-where", 13)]
    [InlineData("60 x 60 less 24 x 24 at the back", "outline-where", 24)]
    [InlineData("60 x 60 less 24 at right-back", "one-of-two", 15)]
    [InlineData("63 x 63 overall less 24 x 24 at right-back", "outline-faces", 0)]
    [InlineData("60", "one-of-two", 2)]
    [InlineData(",,,,", "outline-corner", 0)]
    [InlineData(";", "one-of-two", null)]
    public void What_is_none_is_told_with_its_place(string typed, string code, int? at)
    {
        var fault = Notation.ReadOutline(typed, Unit.Inch).Fault;
        fault.Should().NotBeNull();
        if (at is { } place)
        {
            (fault!.Code, fault.Offset).Should().Be((code, place));
        }
    }

    [Fact]
    public void Nothing_that_is_typed_makes_it_stop()
    {
        var dice = new Random(7);
        string[] pieces =
            ["0", "60", ",", " ", ";", " less ", " clipped ", " at ", "x", "right-back", "-", "1/2", "'", "\"", "mm",
            "e", "\u0661", "999999999999", "."];
        for (var i = 0; i < 20_000; i++)
        {
            var typed = string.Concat(Enumerable.Range(0, dice.Next(1, 14)).Select(_ => pieces[dice.Next(pieces.Length)]));
            var read = Notation.ReadOutline(typed, dice.Next(3) switch { 0 => Unit.Inch, 1 => Unit.Millimetre, _ => null });
            (read.IsRead || (read.Fault!.Offset >= 0 && read.Fault.Offset <= typed.Length)).Should().BeTrue(typed);
        }
    }
}
