using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>What phones and word processors make of plain characters, undone one character at a time.</summary>
internal static class Glyphs
{
    private const string Superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    private static readonly Dictionary<char, Rational> FractionSigns = new()
    {
        ['½'] = new(1, 2),
        ['¼'] = new(1, 4),
        ['¾'] = new(3, 4),
        ['⅛'] = new(1, 8),
        ['⅜'] = new(3, 8),
        ['⅝'] = new(5, 8),
        ['⅞'] = new(7, 8),
        ['⅓'] = new(1, 3),
        ['⅔'] = new(2, 3),
        ['⅕'] = new(1, 5),
        ['⅖'] = new(2, 5),
        ['⅗'] = new(3, 5),
        ['⅘'] = new(4, 5),
        ['⅙'] = new(1, 6),
        ['⅚'] = new(5, 6),
        ['⅐'] = new(1, 7),
        ['⅑'] = new(1, 9),
        ['⅒'] = new(1, 10),
    };

    public static bool IsFraction(char c, out Rational value) => FractionSigns.TryGetValue(c, out value);

    public static bool IsSpace(char c) => char.IsWhiteSpace(c);

    /// <summary>Characters that nobody sees: joiners, marks of direction, the mark at the start of a file.</summary>
    public static bool IsUnseen(char c) =>
        c is (>= '\u200B' and <= '\u200F') or (>= '\u202A' and <= '\u202E') or (>= '\u2060' and <= '\u2069') or '\uFEFF';

    /// <summary>A raised digit or one below the line.</summary>
    public static bool IsSmallDigit(char c, out char digit)
    {
        var raised = Superscripts.IndexOf(c, StringComparison.Ordinal);
        digit = raised >= 0 ? (char)('0' + raised) : c is >= '₀' and <= '₉' ? (char)('0' + (c - '₀')) : '\0';
        return digit != '\0';
    }

    /// <summary>The plain character that was meant.</summary>
    public static char Plain(char c) => c switch
    {
        >= '\uFF01' and <= '\uFF5E' => Plain((char)(c - 0xFEE0)),
        '\u00AD' or (>= '\u2010' and <= '\u2015') or '\u2212' or '\uFE58' or '\uFE63' => '-',
        '\u2044' or '\u2215' or '\u29F8' => '/',
        '`' or '´' or '‘' or '’' or '‚' or '‛' or '′' or '‵' or 'ʹ' or 'ʼ' => '\'',
        '“' or '”' or '„' or '‟' or '″' or '‶' or 'ʺ' or '˝' or '〃' => '"',
        '×' or '✕' or '✖' or '*' => '×',
        'º' or '˚' => '°',
        '∶' => ':',
        _ => c,
    };
}
