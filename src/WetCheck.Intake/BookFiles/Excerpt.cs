using System.Text;

namespace WetCheck.Intake;

/// <summary>A piece of a file as a text of its own, with lines and columns as in the file.</summary>
internal static class Excerpt
{
    public static string Of(SourceText source, MapNode map)
    {
        var start = map.At;
        var (endLine, endColumn) = End(source, map);
        var text = new StringBuilder().Append('\n', start.Line - 1).Append(' ', start.Column - 1);
        for (var line = start.Line; line <= endLine; line++)
        {
            var whole = source.Line(line);
            var from = line == start.Line ? start.Column - 1 : 0;
            var to = line == endLine ? Math.Min(endColumn, whole.Length) : whole.Length;
            text.Append(whole.AsSpan(Math.Min(from, to), Math.Max(0, to - from))).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>The last line, and the column behind its last character.</summary>
    private static (int Line, int Column) End(SourceText source, MapNode map)
    {
        var isBraced = source.Line(map.At.Line).ElementAtOrDefault(map.At.Column - 1) == '{';
        return isBraced ? (map.EndAt.Line, map.EndAt.Column) : LastText(map) is { } last ? (last.EndLine, int.MaxValue)
            : (map.At.Line, int.MaxValue);
    }

    private static ScalarNode? LastText(Node node) => node switch
    {
        ScalarNode scalar => scalar,
        ListNode list => list.Items.Select(LastText).LastOrDefault(text => text is not null),
        MapNode { Entries: [.., var last] } => LastText(last.Value) is { IsBlank: false } text ? text : last.Key,
        _ => null,
    };
}
