using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>
/// Reads a height: a length with, if wanted, above, below or into, and a datum. Without those words it is up from the datum that was asked.
/// <c>in bed</c> is into it, nobody knows how deep.
/// </summary>
internal sealed class HeightReader(Vocabulary vocabulary, Unit? lone)
{
    private static readonly string[] s_directions = ["above", "below", "into"];

    public Taken<ReadingValue> Read(string text, ReadingKind reading)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length > 1 && (words[0] is "in" or "into" or "In" or "Into"))
        {
            return Within(text, text.IndexOf(words[1], words[0].Length, StringComparison.Ordinal), reading);
        }

        var (at, word) = Direction(text);
        var number = Notation.ReadLength(at < 0 ? text : text[..at], lone);
        if (!number.IsRead)
        {
            return number.Fault;
        }

        if (at < 0)
        {
            return number.Value;
        }

        var after = at + word.Length;
        var amount = word == "above" ? number.Value.Amount : -number.Value.Amount;
        if (text[after..].Trim().Length == 0)
        {
            return number.Value with { Amount = amount };
        }

        var datum = DatumOf(text, after, reading);
        return datum.IsRead ? number.Value with { Amount = amount, Datum = Asked(datum.Value, reading) } : datum.Fault;
    }

    private Taken<ReadingValue> Within(string text, int at, ReadingKind reading)
    {
        var datum = DatumOf(text, at, reading);
        return datum.IsRead
            ? new ReadingValue.OfAmount(new Interval(null, 0, HiOpen: true), lone ?? Unit.Inch, Asked(datum.Value, reading), Exact: true)
            : datum.Fault;
    }

    /// <summary>Null for the datum that was asked anyway.</summary>
    private static string? Asked(Datum datum, ReadingKind reading) => datum.Name == reading.From ? null : datum.Name;

    private static (int At, string Word) Direction(string text)
    {
        foreach (var word in s_directions)
        {
            var at = text.IndexOf(word, StringComparison.OrdinalIgnoreCase);
            if (at >= 0 && (at == 0 || !char.IsLetter(text[at - 1]))
                && (at + word.Length == text.Length || char.IsWhiteSpace(text[at + word.Length])))
            {
                return (at, word);
            }
        }

        return (-1, "");
    }

    /// <summary>
    /// By its name, by what it is called in words, or by its last word. Of several with that last word the asked one is
    /// meant.
    /// </summary>
    private Taken<Datum> DatumOf(string text, int from, ReadingKind reading)
    {
        var typed = text[from..].Trim();
        var folded = WithoutArticle(Names.Fold(typed));
        var whole = vocabulary.Datums.FirstOrDefault(datum => Names.Fold(datum.Name) == folded
            || WithoutArticle(Names.Fold(datum.Say.En)) == folded);
        if (whole is not null)
        {
            return whole;
        }

        var ends = vocabulary.Datums.Where(datum => Names.Fold(datum.Name).EndsWith(" " + folded, StringComparison.Ordinal)).ToList();
        var start = from + text[from..].IndexOf(typed, StringComparison.Ordinal);
        return ends.Count == 1 ? ends[0]
            : ends.Find(datum => datum.Name == reading.From) is { } asked ? asked
            : ends.Count > 1 ? Messages.WhichDatum(start, typed, [.. ends.Select(datum => datum.Name)])
            : Messages.UnknownDatum(start, typed, [.. vocabulary.Datums.Select(datum => datum.Name)]);
    }

    private static string WithoutArticle(string folded) => folded.StartsWith("the ", StringComparison.Ordinal) ? folded[4..] : folded;
}
