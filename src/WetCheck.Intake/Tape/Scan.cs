using System.Globalization;
using System.Numerics;
using System.Text;
using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Cuts a typed quantity into its pieces.</summary>
internal sealed class Scan(string text)
{
    private readonly List<Token> _tokens = [];
    private int _at;
    private bool _gap;

    private bool More => _at < text.Length;

    /// <summary>The pieces, with <see cref="Sign.End"/> as the last.</summary>
    public static IReadOnlyList<Token> Of(string text) => new Scan(text).All();

    private List<Token> All()
    {
        while (More)
        {
            if (Glyphs.IsSpace(text[_at]))
            {
                _gap = true;
                _at++;
            }
            else if (Glyphs.IsUnseen(text[_at]))
            {
                _at++;
            }
            else
            {
                Piece();
                _gap = false;
            }
        }

        Add(Sign.End, "", text.Length);
        return _tokens;
    }

    private char Peek(int ahead = 0) => _at + ahead < text.Length ? Glyphs.Plain(text[_at + ahead]) : '\0';

    private void Add(Sign sign, string typed, int start, Rational value = default) =>
        _tokens.Add(new Token(sign, typed, value, start, _gap));

    private void Piece()
    {
        var start = _at;
        var c = Peek();
        if (char.IsAsciiDigit(c) || (c == '.' && char.IsAsciiDigit(Peek(1))))
        {
            Number(start);
        }
        else if (Glyphs.IsSmallDigit(c, out _))
        {
            SmallNumber(start);
        }
        else if (Glyphs.IsFraction(c, out var value))
        {
            _at++;
            Add(Sign.Fraction, c.ToString(), start, value);
        }
        else if (c is '℃' or '℉')
        {
            _at++;
            Add(Sign.Word, c == '℃' ? "c" : "f", start);
        }
        else if (char.IsLetter(c))
        {
            Word(start);
        }
        else
        {
            Mark(c, start);
        }
    }

    private void Number(int start)
    {
        var digits = new StringBuilder();
        while (char.IsAsciiDigit(Peek()))
        {
            digits.Append(Peek());
            _at++;
        }

        var scale = 0;
        if (Peek() == '.' && !char.IsLetter(Peek(1)))
        {
            _at++;
            var point = digits.Length;
            while (char.IsAsciiDigit(Peek()))
            {
                digits.Append(Peek());
                _at++;
            }

            scale = digits.Length - point;
        }

        AddNumber(digits.ToString(), scale, start);
    }

    private void SmallNumber(int start)
    {
        var digits = new StringBuilder();
        while (Glyphs.IsSmallDigit(Peek(), out var digit))
        {
            digits.Append(digit);
            _at++;
        }

        // Raised digits touch the whole number before them, yet are never part of it.
        _gap |= _tokens.Count > 0 && _tokens[^1].Sign == Sign.Number;
        AddNumber(digits.ToString(), 0, start);
    }

    private void AddNumber(string digits, int scale, int start)
    {
        var shown = scale == 0 ? digits : $"{digits[..^scale]}.{digits[^scale..]}";
        var value = digits.Length > Notation.MostDigits ? default
            : new Rational(BigInteger.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture), BigInteger.Pow(10, scale));
        Add(Sign.Number, shown, start, value);
    }

    private void Word(int start)
    {
        var letters = new StringBuilder();
        while (char.IsLetter(Peek()) && !Glyphs.IsFraction(Peek(), out _) && Peek() != '×')
        {
            letters.Append(char.ToLowerInvariant(Peek()));
            _at++;
        }

        var word = letters.ToString();
        if (word.Length > 1 && word[^1] == 'x' && UnitWords.Find(Measure.Length, word[..^1]) is not null)
        {
            Add(Sign.Word, word[..^1], start);
            Add(Sign.Times, "x", _at - 1);
            return;
        }

        if (Peek() is '²' or '³'
            || (Peek() is '2' or '3' && UnitWords.MayBeRaised(word) && !char.IsLetterOrDigit(Peek(1))
            && Peek(1) is not ('/' or '.' or '\'' or '"' or '-')))
        {
            word += Peek() is '²' or '2' ? '2' : '3';
            _at++;
        }

        if (Peek() == '.')
        {
            _at++;
        }

        Add(word == "x" ? Sign.Times : Sign.Word, word, start);
    }

    private void Mark(char c, int start)
    {
        _at++;
        var sign = c switch
        {
            '-' => Sign.Dash,
            '/' => Sign.Slash,
            '"' => Sign.Inch,
            '\'' => Sign.Foot,
            '×' => Sign.Times,
            ':' => Sign.Colon,
            ',' => Sign.Comma,
            '%' => Sign.Percent,
            '°' => Sign.Degree,
            '+' => Sign.Plus,
            _ => Sign.Other,
        };
        if (sign == Sign.Foot && Peek() == '\'')
        {
            _at++;
            sign = Sign.Inch;
        }

        Add(sign, c.ToString(), start);
    }
}
