using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads an item that answers several questions of one part: <c>lap 2 open</c>. Words in any order.</summary>
internal sealed class PartReader(ValueReader values, ProblemList problems)
{
    /// <summary>The answers; null, with a problem, where one of them can't be read.</summary>
    public IReadOnlyList<(ReadingKind Reading, ReadingValue Value, Piece Typed)>? Read(Piece piece, PartKind kind)
    {
        var typed = kind.Readings.Where(reading => !reading.Derived && reading.Is != Form.Conclusion).ToList();
        var main = typed.Find(reading => reading.Name == kind.Main) ?? typed[0];
        var parts = typed.Count == 1 || ValueReader.ChoiceOf(piece.Text, main) is not null || piece.Is("none") || piece.Is("hidden")
            ? [(main, piece)]
            : Split(piece, typed, main);
        if (parts.GroupBy(part => part.Reading.Name, StringComparer.Ordinal).FirstOrDefault(group => group.Count() > 1) is { } twice)
        {
            problems.Add(twice.Last().Piece.At, Messages.AnsweredTwice(twice.Key, twice.Last().Piece.Text));
            return null;
        }

        var read = parts.Select(part => (part.Reading, Value: values.Read(part.Piece, part.Reading), part.Piece)).ToList();
        return read.TrueForAll(part => part.Value is not null) ? [.. read.Select(part => (part.Reading, part.Value!, part.Piece))] : null;
    }

    private static List<(ReadingKind Reading, Piece Piece)> Split(Piece piece, List<ReadingKind> typed, ReadingKind main)
    {
        var words = piece.Words();
        var parts = new List<(ReadingKind, Piece)>();
        var (run, runStart) = (main, 0);
        for (var i = 0; i < words.Count;)
        {
            var named = Longest(piece, words, i, name => typed.Find(reading => Names.Same(reading.Name, name)));
            var chosen =
                named.Found is null
                ? Longest(piece, words, i,
                text => typed.Find(reading => ValueReader.ChoiceOf(text, reading) is not null)) : default;
            var count = Math.Max(named.Count, chosen.Count);
            if (count == 0)
            {
                i++;
                continue;
            }

            Close(i);
            if (chosen.Found is { } choice)
            {
                parts.Add((choice, Between(piece, words, i, i + count)));
                (run, runStart) = (main, i + count);
            }
            else
            {
                (run, runStart) = (named.Found!, i + count);
            }

            i += count;
        }

        Close(words.Count);
        return parts;

        void Close(int end)
        {
            if (end > runStart)
            {
                parts.Add((run, Between(piece, words, runStart, end)));
            }
        }
    }

    private static (ReadingKind? Found, int Count) Longest(Piece piece, IReadOnlyList<(string Text, int Start)> words,
        int from, Func<string, ReadingKind?> find)
    {
        for (var count = Math.Min(5, words.Count - from); count > 0; count--)
        {
            if (find(Between(piece, words, from, from + count).Text) is { } found)
            {
                return (found, count);
            }
        }

        return default;
    }

    private static Piece Between(Piece piece, IReadOnlyList<(string Text, int Start)> words, int from, int to) =>
        piece.Slice(words[from].Start, words[to - 1].Start + words[to - 1].Text.Length - words[from].Start);
}
