using System.Text;
using System.Text.RegularExpressions;
using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>What is done to the characters of a file before YAML sees them. Every character keeps its column.</summary>
internal static partial class Characters
{
    /// <summary>A lone question mark is an answer here ("it is there, nothing known") and the start of a key in YAML.</summary>
    private const char WideQuestionMark = '？';

    /// <summary>Spaces of phones and word processors become plain ones; odd characters are named and become a mark.</summary>
    public static string Plain(SourceText source, ProblemList problems)
    {
        var text = new StringBuilder(source.Text.Length);
        var (line, lineStart) = (1, 0);
        for (var i = 0; i < source.Text.Length; i++)
        {
            var c = source.Text[i];
            if (c == '\n' || (c == '\r' && (i + 1 == source.Text.Length || source.Text[i + 1] != '\n')))
            {
                (line, lineStart) = (line + 1, i + 1);
            }

            if (char.IsHighSurrogate(c) && i + 1 < source.Text.Length && char.IsLowSurrogate(source.Text[i + 1]))
            {
                var low = source.Text[++i];
                if (VisibleText.IsUnseenPair(c, low))
                {
                    problems.Add(source.Place(line, i - lineStart), Messages.OddCharacter(char.ConvertToUtf32(c, low)));
                    text.Append('\uFFFD').Append('\uFFFD');
                }
                else
                {
                    text.Append(c).Append(low);
                }
            }
            else if (IsOdd(c))
            {
                problems.Add(source.Place(line, i - lineStart + 1), Messages.OddCharacter(c));
                text.Append('\uFFFD');
            }
            else
            {
                text.Append(IsSpace(c) ? ' ' : c);
            }
        }

        var plain = TabsAlone().Replace(text.ToString(), line => new string(' ', line.Length));
        return LoneQuestionMark().Replace(plain, WideQuestionMark.ToString());
    }

    /// <summary>The text of a value, with the question marks as typed.</summary>
    public static string AsTyped(string value) => value.Replace(WideQuestionMark, '?');

    private static bool IsOdd(char c) =>
        VisibleText.IsUnseen(c) || char.IsSurrogate(c);

    private static bool IsSpace(char c) => c is '\u00A0' or '\u202F' or '\u205F' or '\u3000' or (>= '\u2000' and <= '\u200A');

    /// <summary>A line of nothing but space is a blank line, Tabs or not.</summary>
    [GeneratedRegex(@"^(?=[ ]*\t)(?>[ \t]+)(?=\r?$)", RegexOptions.Multiline)]
    private static partial Regex TabsAlone();

    [GeneratedRegex(@"(?<=([:,\[{]|^\s*-)[ \t]*)\?(?=[ \t]*([,}\]\r\n]|$|[ \t]#))", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex LoneQuestionMark();
}
