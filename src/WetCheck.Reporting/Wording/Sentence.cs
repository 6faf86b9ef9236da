namespace WetCheck.Reporting;

/// <summary>Small mendings of sentences that are put together from parts.</summary>
public static class Sentence
{
    public static string Capital(string text) =>
        text.Length == 0 || char.IsUpper(text[0]) ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>With the full stop that a text written without one wants.</summary>
    public static string Closed(string text) => text.Length == 0 || text[^1] is '.' or '?' or '!' or ':' ? text : text + ".";

    /// <summary>Several sentences in one line; empty ones fall away.</summary>
    public static string Joined(params IEnumerable<string> sentences) => string.Join(' ', sentences.Where(s => s.Length > 0));

    /// <summary>Up to the first comma of the first sentence, as a sentence of its own.</summary>
    public static string Clause(string text)
    {
        var sentence = First(text);
        var comma = sentence.IndexOf(", ", StringComparison.Ordinal);
        return comma < 0 ? sentence : sentence[..comma] + ".";
    }

    /// <summary>Up to the first full stop that ends a word; a figure or "B415." inside stays whole.</summary>
    public static string First(string text)
    {
        for (var i = 1; i < text.Length - 1; i++)
        {
            if (text[i] is '.' or '?' or '!' && text[i + 1] == ' ')
            {
                return text[..(i + 1)];
            }
        }

        return text;
    }
}
