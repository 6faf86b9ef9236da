using System.Text;

namespace WetCheck.Intake;

/// <summary>Names as people type them: space, dash and underscore are one, and so is any case.</summary>
public static class Names
{
    /// <summary>The one form of a name: small letters, single spaces.</summary>
    public static string Fold(string name)
    {
        var folded = new StringBuilder(name.Length);
        for (var letters = new FoldedLetters(name); letters.MoveNext();)
        {
            folded.Append(letters.Current);
        }

        return folded.ToString();
    }

    public static bool Same(string a, string b)
    {
        var (left, right) = (new FoldedLetters(a), new FoldedLetters(b));
        while (left.MoveNext())
        {
            if (!right.MoveNext() || left.Current != right.Current)
            {
                return false;
            }
        }

        return !right.MoveNext();
    }

    /// <summary>The name that is meant, if one of those known is the same.</summary>
    public static string? Find(string name, IEnumerable<string> known)
    {
        foreach (var candidate in known)
        {
            if (Same(name, candidate))
            {
                return candidate;
            }
        }

        return null;
    }

    /// <summary>The known name with the fewest letters to change, if those are fewer than half of it.</summary>
    public static string? Nearest(string name, IEnumerable<string> known)
    {
        var folded = Fold(name);
        if (folded.Length > 60)
        {
            return null;
        }

        var best = known
            .Select(candidate => (Name: candidate, Changes: Changes(folded, Fold(candidate))))
            .OrderBy(pair => pair.Changes)
            .FirstOrDefault((Name: "", Changes: int.MaxValue));
        return best.Changes * 2 < Math.Max(2, Math.Max(folded.Length, best.Name.Length)) ? best.Name : null;
    }

    /// <summary>Letters to put in, take out, change, or swap with the next.</summary>
    private static int Changes(string a, string b)
    {
        var rows = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                if (i == 0 || j == 0)
                {
                    rows[i, j] = i + j;
                    continue;
                }

                var change = rows[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                rows[i, j] = Math.Min(change, Math.Min(rows[i - 1, j], rows[i, j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    rows[i, j] = Math.Min(rows[i, j], rows[i - 2, j - 2] + 1);
                }
            }
        }

        return rows[a.Length, b.Length];
    }
}
