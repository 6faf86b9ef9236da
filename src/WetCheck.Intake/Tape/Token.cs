using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>What a piece of typed text is, whatever character it was typed with.</summary>
internal enum Sign { Number, Fraction, Word, Dash, Slash, Foot, Inch, Times, Colon, Comma, Percent, Degree, Plus, Other, End }

/// <summary>One piece of a typed quantity.</summary>
/// <param name="Text">Of a number its digits as typed; of a word its lower case letters.</param>
/// <param name="Value">Of a number or a fraction sign.</param>
/// <param name="Start">UTF-16 units from the start of the text.</param>
/// <param name="Gap">A space stands before it.</param>
internal readonly record struct Token(Sign Sign, string Text, Rational Value, int Start, bool Gap)
{
    public bool IsWhole => Sign == Sign.Number && !Text.Contains('.', StringComparison.Ordinal);

    public bool IsFigure => Sign is Sign.Number or Sign.Fraction;

    public bool Is(string word) => Sign == Sign.Word && Text == word;
}
