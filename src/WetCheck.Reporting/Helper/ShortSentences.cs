namespace WetCheck.Reporting;

/// <summary>Cuts text to sentences of at most twelve words: what one hears, holds and does before the next.</summary>
public static class ShortSentences
{
    public const int Words = 12;

    /// <summary>Sentences of a text in their order; a long one is cut at its commas, and is left long where it has none.</summary>
    public static IReadOnlyList<string> Of(string text) =>
        [.. Sentences(text).SelectMany(sentence => CountOf(sentence) <= Words ? [sentence] : Cut(sentence))];

    /// <summary>No sentence of it has to be cut.</summary>
    public static bool Whole(string text) => Sentences(text).All(sentence => CountOf(sentence) <= Words);

    /// <summary>Figures are read off the tape, not as words.</summary>
    public static int CountOf(string sentence) => sentence.Split(' ').Count(word => word.Any(char.IsLetter));

    private static IEnumerable<string> Sentences(string text)
    {
        while (text.Length > 0)
        {
            var first = Sentence.First(text);
            yield return first;
            text = text[first.Length..].TrimStart();
        }
    }

    /// <summary>A question stays a question in each of its pieces.</summary>
    private static IEnumerable<string> Cut(string sentence)
    {
        var end = sentence[^1] is '.' or '?' or '!' ? sentence[^1] : '.';
        var open = sentence[0] == '¿' ? "¿" : "";
        var piece = "";
        foreach (var clause in sentence.TrimStart('¿').TrimEnd('.', '?', '!').Split([", ", "; "], StringSplitOptions.None))
        {
            if (piece.Length > 0 && CountOf($"{piece} {clause}") > Words)
            {
                yield return $"{open}{Sentence.Capital(piece)}{end}";
                piece = "";
            }

            piece += piece.Length == 0 ? clause : ", " + clause;
        }

        yield return $"{open}{Sentence.Capital(piece)}{end}";
    }
}
