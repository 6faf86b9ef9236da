using System.Text;

namespace WetCheck.Pressed;

/// <summary>Texts that are there to be read; each is decoded when it is first asked for.</summary>
internal sealed class TextTable
{
    private readonly byte[] _bytes;
    private readonly int[] _starts;
    private readonly string?[] _texts;

    private TextTable(byte[] bytes, int[] starts)
    {
        _bytes = bytes;
        _starts = starts;
        _texts = new string?[starts.Length - 1];
    }

    /// <summary>Two threads may decode one text twice; either is good.</summary>
    public string this[int place] => _texts[place] ??= Encoding.UTF8.GetString(_bytes, _starts[place], _starts[place + 1] - _starts[place]);

    /// <param name="at">Where the table begins, and afterwards where it ends.</param>
    public static TextTable Open(byte[] bytes, ref int at)
    {
        var starts = new int[Page.Number(bytes, ref at) + 1];
        for (var i = 1; i < starts.Length; i++)
        {
            starts[i] = starts[i - 1] + Page.Number(bytes, ref at);
        }

        for (var i = 0; i < starts.Length; i++)
        {
            starts[i] += at;
        }

        at = starts[^1];
        return new TextTable(bytes, starts);
    }
}
