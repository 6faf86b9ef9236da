using System.Globalization;
using System.Net;
using System.Text;

namespace WetCheck.Reporting;

/// <summary>Makes any text harmless where it is put.</summary>
internal static class Escape
{
    public static string Html(string text) => WebUtility.HtmlEncode(text);

    /// <summary>In a quoted string of a style sheet.</summary>
    public static string Css(string text)
    {
        var safe = new StringBuilder(text.Length + 16);
        foreach (var rune in text.EnumerateRunes())
        {
            if (Rune.IsLetterOrDigit(rune) || rune.Value is ' ' or '.' or ',' or '-')
            {
                safe.Append(rune);
            }
            else
            {
                safe.Append(CultureInfo.InvariantCulture, $"\\{rune.Value:X} ");
            }
        }

        return safe.ToString();
    }

    /// <summary>In a line of Markdown.</summary>
    public static string Markdown(string text)
    {
        var safe = new StringBuilder(text.Length + 16);
        for (var i = 0; i < text.Length; i++)
        {
            var character = text[i];

            // The last three keep a reader from making a link of an address.
            if (character is '\\' or '`' or '*' or '_' or '[' or ']' or '<' or '>' or '#' or '|' or '&' or '~' or '@'
                || (character == ':' && text.AsSpan(i + 1).StartsWith("//"))
                || (character == '.' && i >= 3 && text.AsSpan(i - 3, 3)
                .Equals("www", StringComparison.OrdinalIgnoreCase)))
            {
                safe.Append('\\');
            }

            safe.Append(character is '\n' or '\r' ? ' ' : character);
        }

        return safe.ToString();
    }

    /// <summary>A rule's own Markdown is kept, but no tag in it.</summary>
    public static string MarkdownTags(string markdown) => markdown.Replace("<", "\\<", StringComparison.Ordinal).Replace('\n', ' ');
}
