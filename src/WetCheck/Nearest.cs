namespace WetCheck;

/// <summary>The word that was probably meant.</summary>
public static class Nearest
{
    /// <summary>Of words with at most a third of their letters changed, in any case, the closest; null: none is.</summary>
    public static string? Of(string typed, IEnumerable<string> words) => words
        .Select(word => (word, changes: Changes(typed.ToLowerInvariant(), word.ToLowerInvariant())))
        .Where(pair => pair.changes <= Math.Max(1, pair.word.Length / 3))
        .OrderBy(pair => pair.changes).ThenBy(pair => pair.word, StringComparer.Ordinal)
        .Select(pair => pair.word)
        .FirstOrDefault();

    /// <summary>Letters to add, drop, change or swap with their neighbour.</summary>
    private static int Changes(string a, string b)
    {
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                d[i, j] = i == 0 || j == 0 ? i + j
                    : Math.Min(Math.Min(d[i - 1, j], d[i, j - 1]) + 1, d[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
                }
            }
        }

        return d[a.Length, b.Length];
    }
}
