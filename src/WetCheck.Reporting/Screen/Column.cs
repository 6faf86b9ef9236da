namespace WetCheck.Reporting;

/// <summary>Plain text in a column of 78, so that it fits any terminal and any message.</summary>
public static class Column
{
    public const int Width = 78;

    /// <summary>Where the words of an entry begin: after its number.</summary>
    public const int Indent = 9;

    /// <summary>Broken at blanks. A word longer than the column stands on a line of its own.</summary>
    /// <param name="first">What the first line begins with; the others are indented as deep.</param>
    public static IReadOnlyList<string> Wrap(string text, string first = "", int width = Width)
    {
        var lines = new List<string>();
        var margin = new string(' ', first.Length);
        var line = first;
        var empty = true;
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!empty && line.Length + 1 + word.Length > width)
            {
                lines.Add(line);
                line = margin;
                empty = true;
            }

            line += empty ? word : " " + word;
            empty = false;
        }

        lines.Add(line.TrimEnd());
        return lines;
    }

    /// <summary>Puts a note at the right end of the last line, or on a line of its own where there is no room.</summary>
    public static IReadOnlyList<string> WithEnd(IReadOnlyList<string> lines, string end)
    {
        if (end.Length == 0)
        {
            return lines;
        }

        var room = Width - end.Length;
        return HasRoom(lines, end)
            ? [.. lines.SkipLast(1), lines[^1].PadRight(room) + end]
            : [.. lines, new string(' ', room) + end];
    }

    public static bool HasRoom(IReadOnlyList<string> lines, string end) => lines[^1].Length < Width - end.Length - 1;

    /// <summary>A number in its own column: <c> 214-D   </c>.</summary>
    public static string Numbered(string number) => (" " + number).PadRight(Indent - 1) + " ";
}
