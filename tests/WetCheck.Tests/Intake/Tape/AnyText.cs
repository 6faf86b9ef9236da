using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Tests.Intake.Tape;

/// <summary>Whatever is typed is read or asked: no exception, a caret within the text, a sentence that says what to write.</summary>
public sealed class AnyText
{
    private static readonly string[] Pieces =
    [
        "42", "1/2", "-", "–", "½", "⅓", "'", "\"", "’", "″", " ", "\u00A0", "in", "ft", "mm", "m", "x", "×", "over",
            "under", "per", "%", "°", "deg", ":", ",",
        "+", "shy", "strong", ".", ".5", "0", "/", "1", "36", "sq", "in2", "h", "F", "finished", "to studs",
            "999999999999", "\u200B", "\uFFFD", "\uD83D", "#", "floor", "e5", "1e9", "٣", "０",
    ];

    [Fact]
    public void Made_of_likely_pieces()
    {
        var random = new Random(20261125);
        for (var i = 0; i < 8_000; i++)
        {
            ReadEveryWay(string.Concat(Enumerable.Range(0, random.Next(9)).Select(_ => Pieces[random.Next(Pieces.Length)])));
        }
    }

    [Fact]
    public void Made_of_any_characters()
    {
        var random = new Random(1);
        for (var i = 0; i < 4_000; i++)
        {
            ReadEveryWay(string.Concat(Enumerable.Range(0, random.Next(30)).Select(_ => (char)random.Next(i % 2 == 0 ? 0x180 : 0x10000))));
        }
    }

    [Fact]
    public void Too_long()
    {
        Notation.ReadLength(new string('1', 201), Unit.Inch).Fault!.Code.Should().Be("too-long");
        Notation.ReadLength(new string('1', 200), Unit.Inch).Fault!.Code.Should().Be("too-many-digits");
        Notation.ReadLength("999999999999 mil", Unit.Inch).IsRead.Should().BeTrue();
    }

    private static void ReadEveryWay(string text)
    {
        foreach (var lone in new[] { Unit.Inch, Unit.Millimetre, null })
        {
            Told(text, Notation.ReadFall(text, lone).Fault);
            Told(text, Notation.ReadSize(text, lone).Fault);
            Told(text, Notation.ReadPoint(text, lone).Fault);
            foreach (var measure in Enum.GetValues<Measure>())
            {
                Told(text, Notation.ReadAmount(text, measure, lone).Fault);
                Told(text, Notation.ReadQuantity(text, measure, lone).Fault);
            }
        }
    }

    private static void Told(string text, Fault? fault)
    {
        if (fault is not null && (fault.Offset < 0 || fault.Offset > text.Length || fault.Say.Any(char.IsControl)
            || !(fault.Say.Contains("Write", StringComparison.Ordinal) || fault.Say.Contains("Leave", StringComparison.Ordinal))))
        {
            Assert.Fail($"{text}: {fault}");
        }
    }
}
