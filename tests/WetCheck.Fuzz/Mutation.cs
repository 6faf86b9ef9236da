using System.Text;

namespace WetCheck.Fuzz;

/// <summary>A sound text with slips of the pen and signs thrown in, or a text of nothing but signs.</summary>
internal static class Mutation
{
    private const string Signs =
        ":#-?|>&*!%@`'\"{}[],;\t\n\r \u00a0\u2028\u0085\ufeff\ud800\udc00½″−0123456789/+x.\u3164\u200b\u0000\u0001_\\";

    private static readonly string[] s_words =
        ["plan ", "none", "all", "seen", ": ", "\n  ", "\n", "- ", "'", "99999999999", "1/0", "-", " x ", ", ",
        "over ", "{", "}", "hidden", "e9", "١٢", "\r\n", "🛁", "\udb40\udc41"];

    public static string Of(string sound, Random chance)
    {
        if (chance.Next(20) == 0)
        {
            return string.Concat(Enumerable.Range(0, chance.Next(200)).Select(_ => Signs[chance.Next(Signs.Length)]));
        }

        var text = new StringBuilder(sound);
        for (var n = chance.Next(1, 7); n > 0 && text.Length > 0; n--)
        {
            Change(text, chance);
        }

        return text.ToString();
    }

    private static void Change(StringBuilder text, Random chance)
    {
        var at = chance.Next(text.Length);
        var length = Math.Min(chance.Next(1, 12), text.Length - at);
        switch (chance.Next(7))
        {
            case 0:
                text.Remove(at, length);
                break;
            case 1:
                text.Insert(at, Signs[chance.Next(Signs.Length)]);
                break;
            case 2:
                text[at] = Signs[chance.Next(Signs.Length)];
                break;
            case 3:
                text.Insert(at, s_words[chance.Next(s_words.Length)]);
                break;
            case 4:
                text.Insert(chance.Next(text.Length), text.ToString(at, length));
                break;
            case 5:
                text.Insert(at, new string(Signs[chance.Next(Signs.Length)], chance.Next(1, 300)));
                break;
            default:
                text.Length = Math.Max(1, at);
                break;
        }
    }
}
