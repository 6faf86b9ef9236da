using System.Text;

namespace WetCheck.Reporting;

/// <summary>Fills the slots in braces of a text. A brace that names no given slot is kept as it stands.</summary>
public static class Slots
{
    public static string Fill(string text, params ReadOnlySpan<(string Slot, string Value)> slots)
    {
        if (!text.Contains('{', StringComparison.Ordinal))
        {
            return text;
        }

        // One pass, so that a value that holds braces itself is never filled again.
        var filled = new StringBuilder(text.Length + 32);
        for (var i = 0; i < text.Length; i++)
        {
            var end = text[i] == '{' ? text.IndexOf('}', i) : -1;
            if (end > i && ValueOf(text.AsSpan(i + 1, end - i - 1), slots) is { } value)
            {
                filled.Append(value);
                i = end;
            }
            else
            {
                filled.Append(text[i]);
            }
        }

        return filled.ToString();
    }

    private static string? ValueOf(ReadOnlySpan<char> name, ReadOnlySpan<(string Slot, string Value)> slots)
    {
        foreach (var (slot, value) in slots)
        {
            if (name.SequenceEqual(slot))
            {
                return value;
            }
        }

        return null;
    }
}
