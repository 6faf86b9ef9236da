using System.Text.RegularExpressions;

namespace WetCheck.Keys;

/// <summary>One line of <c>rules/words</c>. A line without a text opens a section of the deeper lines that follow.</summary>
/// <remarks>Words with faults are told by the reader of the rule book; here what is no key is passed over.</remarks>
internal sealed class WordKey(int depth, string key, string text)
{
    private static readonly Regex s_line =
        new("^(?<depth> *)(?:\"(?<key>[^\"]+)\"|(?<key>[^\\s#\":][^:\"]*)):(?:\\s+(?<text>[^#\\s].*))?(?:\\s|$)");

    public int Depth { get; } = depth;

    public string Key { get; } = key;

    public string Text { get; } = text;

    public static IEnumerable<WordKey> Read(string words)
    {
        foreach (var line in words.Split('\n'))
        {
            var found = s_line.Match(line.TrimEnd());
            if (found.Success)
            {
                yield return new(found.Groups["depth"].Length, found.Groups["key"].Value, found.Groups["text"].Value);
            }
        }
    }
}
