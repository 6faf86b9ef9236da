using System.Text;

namespace WetCheck.Cli.Text;

/// <summary>
/// What is typed, line by line. Of a line that never ends no more is kept than shows that it is too long.
/// </summary>
internal sealed class TypedLines(TextReader inner) : TextReader
{
    /// <summary>The line before ended in a carriage return; a line feed behind it belongs to it.</summary>
    private bool _isReturn;

    /// <returns>At most one character more than <see cref="TooLong.Characters"/>; null at the end, and where nothing can be read.</returns>
    public override string? ReadLine()
    {
        try
        {
            return Line();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ObjectDisposedException)
        {
            return null;
        }
    }

    private string? Line()
    {
        var line = new StringBuilder();
        var next = inner.Read();
        next = next == '\n' && _isReturn ? inner.Read() : next;
        var isEnd = next == -1;
        for (; next is not (-1 or '\n' or '\r'); next = inner.Read())
        {
            if (line.Length <= TooLong.Characters)
            {
                line.Append((char)next);
            }
        }

        _isReturn = next == '\r';
        return isEnd ? null : line.ToString();
    }
}
