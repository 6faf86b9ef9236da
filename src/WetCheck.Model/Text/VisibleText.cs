using System.Text;

namespace WetCheck.Model;

/// <summary>
/// Text from outside as it may be printed: what moves the cursor, colours a terminal, turns the direction of reading or can't be seen
/// becomes one visible mark. Every character keeps its column.
/// </summary>
public static class VisibleText
{
    public const char Mark = '\uFFFD';

    /// <summary>Line feeds and Tabs stay.</summary>
    public static string Of(string text)
    {
        if (!HasUnseen(text))
        {
            return text;
        }

        var seen = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            if (i < text.Length - 1 && char.IsSurrogatePair(text[i], text[i + 1]))
            {
                var isUnseen = IsUnseenPair(text[i], text[i + 1]);
                seen.Append(isUnseen ? Mark : text[i]).Append(isUnseen ? Mark : text[i + 1]);
                i++;
            }
            else
            {
                seen.Append(IsUnseen(text[i]) || char.IsSurrogate(text[i]) ? Mark : text[i]);
            }
        }

        return seen.ToString();
    }

    /// <summary>In one line: a name, a word that is quoted.</summary>
    public static string Line(string text) => Of(text).Replace('\n', ' ').Replace('\r', ' ').Replace('\t', ' ');

    /// <summary>
    /// Controls but for Tab and the ends of a line; line and paragraph separators; marks and overrides of direction (Unicode TR 9);
    /// spaces and joiners of no width; letters and signs that are blank by design: fillers, the empty Braille cell.
    /// </summary>
    public static bool IsUnseen(char c) =>
        (char.IsControl(c) && c is not ('\t' or '\n' or '\r'))
        || c is '\u00AD' or '\u034F' or '\u115F' or '\u1160' or '\u17B4' or '\u17B5' or '\u2800' or '\u3164' or '\uFFA0' or '\u061C'
            or '\u180E' or (>= '\u200B' and <= '\u200F') or (>= '\u2028' and <= '\u202E')
            or (>= '\u2060' and <= '\u206F') or '\uFEFF' or (>= '\uFFF9' and <= '\uFFFB') or '\uFFFE' or '\uFFFF';

    /// <summary>Tags, U+E0000 to U+E0FFF: letters that no screen shows.</summary>
    public static bool IsUnseenPair(char high, char low) =>
        char.IsSurrogatePair(high, low) && char.ConvertToUtf32(high, low) is >= 0xE0000 and <= 0xE0FFF;

    private static bool HasUnseen(string text)
    {
        foreach (var c in text)
        {
            if (IsUnseen(c) || char.IsSurrogate(c))
            {
                return true;
            }
        }

        return false;
    }
}
