using System.Text.RegularExpressions;

namespace WetCheck.Reporting;

/// <summary>
/// Explains each word of the trade where a page uses it first: in capitals, its meaning in brackets behind it.
/// Texts must come in the order in which they are read.
/// </summary>
internal sealed class FirstUse(Glossary glossary)
{
    private readonly HashSet<string> _explained = new(StringComparer.Ordinal);

    /// <summary>"The WEEP HOLES (small holes in the drain) are blocked."</summary>
    public string In(string text) => glossary.Word.Replace(text, match =>
        IsNew(match) ? $"{Capitals(match)} ({Meaning(match)})" : match.Value);

    /// <summary>Words to be said aloud stay whole; what they mean comes after them.</summary>
    /// <returns>The words, and the meanings in brackets or nothing.</returns>
    public (string Text, string Meanings) InSpeech(string text)
    {
        var meanings = new List<string>();
        var said = glossary.Word.Replace(text, match =>
        {
            if (!IsNew(match))
            {
                return match.Value;
            }

            meanings.Add($"{match.Groups["form"].Value.ToUpperInvariant()}: {Meaning(match)}");
            return Capitals(match);
        });
        return (said, meanings.Count == 0 ? "" : $" ({string.Join("; ", meanings)})");
    }

    private bool IsNew(Match match) => _explained.Add(Meaning(match));

    private string Meaning(Match match) => glossary.Meaning(match.Groups["form"].Value);

    private static string Capitals(Match match) => match.Groups["form"].Value.ToUpperInvariant() + match.Groups["end"].Value;
}
