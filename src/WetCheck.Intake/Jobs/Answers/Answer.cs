using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>One typed text, with where it comes from.</summary>
internal sealed record Answer(ScalarNode Text, Provenance By);

/// <summary>A piece of a typed text: an item of a comma list, or some words of it.</summary>
internal sealed record Piece(Answer Answer, int Start, string Text)
{
    public At At => Answer.Text.Within(Start);

    public bool Is(string word) => Names.Same(Text, word);

    public At Within(int offset) => Answer.Text.Within(Start + offset);

    public static Piece Of(Answer answer) => new Piece(answer, 0, answer.Text.Text).Trim();

    public Piece Slice(int from, int length) => new Piece(Answer, Start + from, Text.Substring(from, length)).Trim();

    public Piece From(int from) => Slice(from, Text.Length - from);

    /// <summary>The items between commas, blank ones left out.</summary>
    public IReadOnlyList<Piece> Items()
    {
        var items = new List<Piece>();
        var from = 0;
        for (var i = 0; i <= Text.Length; i++)
        {
            if (i == Text.Length || Text[i] == ',')
            {
                items.Add(Slice(from, i - from));
                from = i + 1;
            }
        }

        return [.. items.Where(item => item.Text.Length > 0)];
    }

    /// <summary>Words with where they start.</summary>
    public IReadOnlyList<(string Text, int Start)> Words()
    {
        var words = new List<(string, int)>();
        for (var i = 0; i < Text.Length; i++)
        {
            if (char.IsWhiteSpace(Text[i]))
            {
                continue;
            }

            var start = i;
            while (i < Text.Length && !char.IsWhiteSpace(Text[i]))
            {
                i++;
            }

            words.Add((Text[start..i], start));
        }

        return words;
    }

    private Piece Trim()
    {
        var lead = Text.Length - Text.TrimStart().Length;
        return this with { Start = Start + lead, Text = Text.Trim() };
    }
}
