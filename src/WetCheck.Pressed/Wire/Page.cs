namespace WetCheck.Pressed;

/// <summary>A stretch of bytes that is being read, and the objects carried so far.</summary>
internal sealed class Page
{
    private readonly byte[] _bytes;
    private readonly int _end;
    private readonly TextTable _texts;
    private int _at;

    private Page(byte[] bytes, int at, int end, TextTable texts)
    {
        _bytes = bytes;
        _at = at;
        _end = end;
        _texts = texts;
    }

    public List<object> Carried { get; } = [];

    public bool IsAtEnd => _at == _end;

    /// <summary>Texts stand before all else.</summary>
    public static Page Open(byte[] bytes)
    {
        var at = 0;
        var texts = TextTable.Open(bytes, ref at);
        return new Page(bytes, at, bytes.Length, texts);
    }

    public int Number() => Number(_bytes, ref _at);

    public string Text() => _texts[Number()];

    public ReadOnlySpan<byte> Raw()
    {
        var length = Number();
        _at += length;
        return _bytes.AsSpan(_at - length, length);
    }

    /// <summary>Passes over a part, to be read later.</summary>
    public Page Leaf()
    {
        var length = Number();
        _at += length;
        return new Page(_bytes, _at - length, _at, _texts);
    }

    public static int Number(byte[] bytes, ref int at)
    {
        var value = 0;
        var shift = 0;
        for (; bytes[at] > 0x7F; shift += 7)
        {
            value |= (bytes[at++] & 0x7F) << shift;
        }

        return value | (bytes[at++] << shift);
    }
}
